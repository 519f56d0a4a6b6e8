"use client";

import type { Preferences } from "@/lib/model/preferences";
import type { TrialPart } from "@/lib/model/trial/trial-entry";
import type { TrialRun } from "@/lib/model/trial/trial-log";
import { readingEntry } from "./entry-of";
import { isFarOff } from "./far-off";
import type { FormField } from "./form-shape";
import { madeNow } from "./make-entry";
import type { PartOutcome } from "./part-outcome";
import { ReadingItem } from "./reading-item";

interface ReadingListProps {
  readonly part: TrialPart;
  readonly here: TrialRun;
  readonly outcome: PartOutcome;
  readonly fields: readonly FormField[];
  readonly unit: "mm" | "mark";
  readonly preferences: Preferences;
  readonly mayWrite: boolean;
  readonly isCounterflow: boolean;
  readonly onAdd: (made: object) => void;
}

/** The readings of a run, the latest first, where wet hands look for it. */
export function ReadingList(props: ReadingListProps) {
  const { part, here, outcome, fields, unit, preferences, mayWrite, isCounterflow, onAdd } = props;
  const { run, readings } = here;
  const residuals = outcome.residualsOf(here);
  if (readings.length === 0) return null;
  return (
    <section aria-labelledby="readings" className="mt-8">
      <h3 id="readings" className="mb-2">
        Readings of run {run}
      </h3>
      <ul>
        {readings
          .map((reading, i) => ({ reading, residual: residuals[i] ?? null }))
          .toReversed()
          .map(({ reading, residual }) => (
            <ReadingItem
              key={`${reading.entry.id} ${unit}`}
              {...{ reading, fields, unit, preferences, mayWrite }}
              off={residual !== null && isFarOff(residual) ? Math.round(Math.abs(residual)) : null}
              onCorrect={(replaces, values, at) =>
                onAdd(readingEntry(part, madeNow(run, at, replaces.id), values, isCounterflow))
              }
              onTakeBack={({ id }) => onAdd({ ...madeNow(run, new Date(), id), part, kind: "void", payload: {} })}
            />
          ))}
      </ul>
    </section>
  );
}
