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
            {count === 0 ? null : (
              <span className="ms-1 font-normal">
                <span aria-hidden>({count})</span>
                <span className="sr-only">{count === 1 ? "1 reading" : `${String(count)} readings`}</span>
              </span>
            )}
          </button>
        );
      })}
    </div>
  );
}
