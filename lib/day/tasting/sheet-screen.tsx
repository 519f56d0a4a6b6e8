import { useState, type ReactElement } from "react";
import { sheetStanding, type ServedFlight, type TastingEntry } from "@/lib/model/tasting/judge-sheet";
import {
  BLANK_SHEET,
  missingParts,
  pointsSoFar,
  SHEET_PART_NAMES,
  SHEET_PARTS,
  sheetTotal,
  type Sheet,
} from "@/lib/model/tasting/sheet";
import type { JudgingSession } from "../sync/judging-session";
import { DescriptorPicker } from "./descriptor-picker";
import { EnteredByOther } from "./entered-by-other";
import { HandedInSheet } from "./handed-in-sheet";
import { SheetPartFields } from "./sheet-part";
import { SheetTurning } from "./sheet-turning";
import { useSheetDraft } from "./use-sheet-draft";

interface SheetScreenProps {
  readonly session: JudgingSession;
  readonly entries: readonly TastingEntry[];
  readonly flight: ServedFlight;
  /** The place of the entry in the order of tasting, from 0. */
  readonly at: number;
  readonly mayWrite: boolean;
}

/** The sheet of one beer, for a phone in one hand. */
export function SheetScreen({ session, entries, flight, at, mayWrite }: SheetScreenProps): ReactElement | null {
  const entry = flight.entries[at];
  const [isChanging, setChanging] = useState(false);
  if (entry === undefined) return null;
  const { entryNo, style } = entry;
  const standing = sheetStanding(entries, entryNo);
  const isRead = !mayWrite || (standing.isHandedIn && !isChanging);
  return (
    <>
      <SheetTurning flight={flight} at={at} />
      <h1>Entry {entryNo}</h1>
      {style === null ? null : <p className="text-muted">To be judged as {style}</p>}
      {standing.handedIn !== null && !standing.isHandedIn ? (
        <p className="notice mt-2">
          A change was begun. What you handed in before counts until you hand this in again.
        </p>
      ) : null}
      <EnteredByOther last={standing.last} session={session} />
      {isRead ? (
        <HandedInSheet
          sheet={standing.payload ?? BLANK_SHEET}
          isHandedIn={standing.isHandedIn}
          onChange={mayWrite ? () => setChanging(true) : null}
        />
      ) : (
        <SheetFields
          kept={standing.payload ?? BLANK_SHEET}
          save={(payload, isFinal) => session.write(flight.flightNo, { kind: "sheet", entryNo, isFinal, payload })}
          onHandedIn={() => setChanging(false)}
        />
      )}
      <SheetTurning flight={flight} at={at} />
    </>
  );
}

interface SheetFieldsProps {
  readonly kept: Sheet;
  readonly save: (sheet: Sheet, isFinal: boolean) => Promise<void>;
  readonly onHandedIn: () => void;
}

function SheetFields({ kept, save, onHandedIn }: SheetFieldsProps): ReactElement {
  const draft = useSheetDraft(kept, (sheet) => save(sheet, false));
  const [problem, setProblem] = useState<string | null>(null);
  const missing = missingParts(draft.value);
  const total = sheetTotal(draft.value);

  function handIn(): void {
    if (missing.length > 0) {
      const names = missing.map((part) => SHEET_PART_NAMES[part].toLowerCase()).join(", ");
      setProblem(`A sheet is handed in with all its points; missing: ${names}.`);
      return;
    }
    draft.settle();
    save(draft.value, true)
      .then(onHandedIn)
      .catch((error: unknown) => setProblem(error instanceof Error ? error.message : String(error)));
  }

  return (
    <>
      {SHEET_PARTS.map((part) => (
        <SheetPartFields key={part} part={part} draft={draft} />
      ))}
      <DescriptorPicker draft={draft} />
      <section className="judging-bar no-print" aria-label="Total and hand in">
        <p className="judging-total">
          <strong>{String(total ?? pointsSoFar(draft.value))}</strong> of 50{total === null ? " so far" : ""}
        </p>
        <button type="button" className="button" onClick={handIn}>
          Hand in
        </button>
        {draft.problem === null ? null : (
          <p className="field-error basis-full" role="alert">
            Not kept on this device: {draft.problem}
          </p>
        )}
        {problem === null || missing.length === 0 ? null : (
          <p className="field-error basis-full" role="alert">
            {problem}
          </p>
        )}
      </section>
    </>
  );
}
