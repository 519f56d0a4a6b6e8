"use client";

import type { Equipment } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { TrialPart } from "@/lib/model/trial/trial-entry";
import type { TrialRun } from "@/lib/model/trial/trial-log";
import { whereOf, type TrialResults } from "@/lib/model/trial/trial-results";
import { DipStickTableView } from "@/lib/ui/equipment/dip-stick-table";
import { FigureList } from "./figure-list";
import type { PartOutcome } from "./part-outcome";
import { toldFigures, type ToldFigure } from "./told-figures";
import { untoldWords } from "./untold";

interface PartResultsProps {
  readonly part: TrialPart;
  readonly run: TrialRun | null;
  readonly outcome: PartOutcome;
  readonly results: TrialResults;
  readonly equipment: Equipment;
  readonly preferences: Preferences;
  readonly onExplain: (figure: ToldFigure) => void;
}

/** What the readings of a part tell by now, or why they do not yet. */
export function PartResults(props: PartResultsProps) {
  const { part, run, outcome, results, equipment, preferences, onExplain } = props;
  const { result } = outcome;
  const where = run === null ? "kettle" : whereOf(run);
  const figures = toldFigures(part, results, { equipment, where });
  const marks = part === "marks" && results.marks?.outcome?.ok === true ? results.marks.outcome.table : null;
  return (
    <section aria-labelledby="told" className="mt-6">
      <h3 id="told" className="mb-2">
        What the readings tell
      </h3>
      <div role="status">
        {result === null ? <p className="text-muted">Nothing yet.</p> : null}
        {result !== null && result.problem !== null ? <p className="text-accent">{result.problem}.</p> : null}
        {result?.outcome?.ok === false ? <p>{untoldWords(part, result.outcome)}</p> : null}
      </div>
      <FigureList figures={figures} preferences={preferences} onExplain={onExplain} />
      {marks === null ? null : <DipStickTableView table={marks} caption="The table so far" preferences={preferences} />}
    </section>
  );
}
