import type { ReactElement } from "react";
import { descriptorName } from "@/lib/model/tasting/descriptors";
import {
  partMaximum,
  pointsSoFar,
  SHEET_PART_NAMES,
  SHEET_PARTS,
  sheetTotal,
  STRENGTH_NAMES,
  type Sheet,
} from "@/lib/model/tasting/sheet";

interface HandedInSheetProps {
  readonly sheet: Sheet;
  readonly isHandedIn: boolean;
  /** null where nothing more is written. */
  readonly onChange: (() => void) | null;
}

/** A sheet to be read, with the way to change it while the tasting is open. */
export function HandedInSheet({ sheet, isHandedIn, onChange }: HandedInSheetProps): ReactElement {
  const total = sheetTotal(sheet);
  return (
    <>
      <p className="judging-total mt-4">
        <strong>{String(total ?? pointsSoFar(sheet))}</strong> of 50, {isHandedIn ? "handed in" : "not handed in"}
      </p>
      <dl className="mt-4">
        {SHEET_PARTS.map((part) => (
          <div key={part} className="judging-read">
            <dt>
              {SHEET_PART_NAMES[part]}: {sheet.scores[part] === null ? "no points" : String(sheet.scores[part])} of{" "}
              {partMaximum(part)}
            </dt>
            {sheet.notes[part] === "" ? null : <dd className="whitespace-pre-line">{sheet.notes[part]}</dd>}
          </div>
        ))}
      </dl>
      {sheet.descriptors.length === 0 ? null : (
        <p className="mt-3">
          Found:{" "}
          {sheet.descriptors
            .map(({ word, strength }) => `${descriptorName(word).toLowerCase()} (${STRENGTH_NAMES[strength]})`)
            .join(", ")}
        </p>
      )}
      {onChange === null ? null : (
        <button type="button" className="button button-quiet mt-4" onClick={onChange}>
          Change it
        </button>
      )}
    </>
  );
}
