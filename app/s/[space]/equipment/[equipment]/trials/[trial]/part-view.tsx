"use client";

import type { Equipment } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { boilsAt } from "@/lib/model/trial/run-inputs";
import type { TrialPart } from "@/lib/model/trial/trial-entry";
import type { TrialRun } from "@/lib/model/trial/trial-log";
import { unitOf, type TrialResults } from "@/lib/model/trial/trial-results";
import { readingFields } from "./form-shape";
import { GuideText } from "./guide-text";
import { PartForms } from "./part-forms";
import { COUNTERFLOW_STEPS, PART_GUIDES } from "./part-guides";
import { outcomeOf } from "./part-outcome";
import { PartResults } from "./part-results";
import { ReadingList } from "./reading-list";
import { RunChart } from "./run-chart";
import { RunChooser } from "./run-chooser";
import type { ToldFigure } from "./told-figures";

interface PartViewProps {
  readonly part: TrialPart;
  readonly run: number;
  readonly runs: readonly TrialRun[];
  readonly results: TrialResults;
  readonly equipment: Equipment;
  readonly preferences: Preferences;
  readonly mayWrite: boolean;
  readonly onRun: (run: number) => void;
  readonly onAdd: (made: object) => void;
  readonly onExplain: (figure: ToldFigure) => void;
}

/** One part of the trial: what to do, the forms, the readings and what they tell. */
export function PartView(props: PartViewProps) {
  const { part, run, runs, results, equipment, preferences, mayWrite, onRun, onAdd, onExplain } = props;
  const guide = PART_GUIDES[part];
  const isCounterflow = equipment.chiller.kind === "counterflow";
  const ofPart = runs.filter((each) => each.part === part);
  const here = ofPart.find((each) => each.run === run) ?? null;
  const numbers = [...new Set([...ofPart.map((each) => each.run), run])].toSorted((a, b) => a - b);
  const outcome = outcomeOf(part, results, here);
  const unit = here === null ? "mm" : unitOf(here);
  const fields = readingFields(part, { isCounterflow, unit, boilC: Math.min(100, boilsAt(equipment)) });
  const isTimed = part !== "dead space" && part !== "marks";
  return (
    <section aria-labelledby="part">
      <h2 id="part" className="mb-3">
        {guide.title}
      </h2>
      <GuideText
        key={part}
        guide={guide}
        steps={part === "chill" && isCounterflow ? COUNTERFLOW_STEPS : guide.steps}
        isBegun={here !== null && here.readings.length > 0}
      />
      <RunChooser numbers={numbers} run={run} mayWrite={mayWrite} onChoose={onRun} />
      <div className="grid gap-8 lg:grid-cols-2">
        {mayWrite ? (
          <PartForms {...{ part, run, here, ofPart, fields, unit, isCounterflow, preferences, onAdd }} />
        ) : null}
        <div>
          <PartResults {...{ part, run: here, outcome, results, equipment, preferences, onExplain }} />
          {here === null || !isTimed ? null : (
            <RunChart
              run={here}
              title={guide.title}
              curve={outcome.curveOf(here)}
              residuals={outcome.residualsOf(here)}
              preferences={preferences}
            />
          )}
        </div>
      </div>
      {here === null ? null : (
        <ReadingList {...{ part, here, outcome, fields, unit, preferences, mayWrite, onAdd, isCounterflow }} />
      )}
    </section>
  );
}
