import { useId, type ReactElement } from "react";
import {
  LONGEST_PART_NOTE,
  partMaximum,
  SHEET_PART_NAMES,
  type Sheet,
  type SheetPart,
} from "@/lib/model/tasting/sheet";
import { PointsPicker } from "./points-picker";
import type { Draft } from "./use-sheet-draft";

/** What to look for, as one goes through a glass. */
const ASKS: Readonly<Record<SheetPart, string>> = {
  aroma: "Malt, hops, yeast, other aromas",
  appearance: "Colour, clarity, head",
  flavour: "Malt, hops, bitterness, fermentation, balance, finish",
  mouthfeel: "Body, carbonation, warmth, creaminess, astringency",
  overall: "How much you enjoy it, and what would make it better",
};

interface SheetPartProps {
  readonly part: SheetPart;
  readonly draft: Draft<Sheet>;
}

/** Points and notes for one part of a sheet. */
export function SheetPartFields({ part, draft }: SheetPartProps): ReactElement {
  const id = useId();
  const { value: sheet } = draft;
  const points = sheet.scores[part];
  const name = SHEET_PART_NAMES[part];
  const most = partMaximum(part);
  return (
    <section aria-labelledby={`${id}-h`} className="judging-part">
      <div className="flex items-baseline justify-between gap-4">
        <h2 id={`${id}-h`}>{name}</h2>
        <p className="tabular-nums">
          <strong>{points === null ? "—" : String(points)}</strong> of {most}
        </p>
      </div>
      <p className="text-muted">{ASKS[part]}</p>
      <PointsPicker
        name={`${id}-points`}
        label={name.toLowerCase()}
        most={most}
        value={points}
        onChange={(given) => draft.change({ ...sheet, scores: { ...sheet.scores, [part]: given } }, "now")}
      />
      <label className="field mt-3">
        <span className="field-label">Notes on {name.toLowerCase()}</span>
        <textarea
          className="input"
          rows={2}
          maxLength={LONGEST_PART_NOTE}
          value={sheet.notes[part]}
          onChange={({ target }) => draft.change({ ...sheet, notes: { ...sheet.notes, [part]: target.value } }, "soon")}
          onBlur={draft.settle}
        />
      </label>
    </section>
  );
}
