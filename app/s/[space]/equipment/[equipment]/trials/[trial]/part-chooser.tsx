"use client";

import { TRIAL_PARTS, type TrialPart } from "@/lib/model/trial/trial-entry";
import type { TrialRun } from "@/lib/model/trial/trial-log";
import { PART_GUIDES } from "./part-guides";

interface PartChooserProps {
  readonly part: TrialPart;
  readonly runs: readonly TrialRun[];
  readonly onChoose: (part: TrialPart) => void;
}

/** The parts of the trial, in a sensible order, with how many readings each has. */
export function PartChooser({ part, runs, onChoose }: PartChooserProps) {
  return (
    <div role="group" aria-label="Parts of the trial" className="no-print mb-6 grid grid-cols-2 gap-3 sm:grid-cols-3">
      {TRIAL_PARTS.map((each) => {
        const count = runs.filter((run) => run.part === each).reduce((sum, { readings }) => sum + readings.length, 0);
        return (
          <button
            key={each}
            type="button"
            aria-pressed={each === part}
            className={each === part ? "button whitespace-normal" : "button button-quiet whitespace-normal"}
            onClick={() => onChoose(each)}
          >
            {PART_GUIDES[each].title}
            <span className="ms-1 font-normal">
              {count === 0 ? "" : `(${String(count)}`}
              {count === 0 ? "" : <span className="sr-only"> readings</span>}
              {count === 0 ? "" : ")"}
            </span>
          </button>
        );
      })}
    </div>
  );
}
