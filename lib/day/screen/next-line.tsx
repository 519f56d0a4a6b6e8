import type { ReactElement } from "react";
import { StepFigures } from "@/lib/ui/brew/step-figures";
import type { DayStep } from "../plan/day-plan";
import { AboutTime } from "./about-time";
import { useDay } from "./day-context";
import { dayStepTitle } from "./step-words";

/** What comes next, so that it can be got ready. */
export function NextLine({ next }: { readonly next: DayStep }): ReactElement {
  const { brew, day, preferences } = useDay();
  return (
    <div className="mt-4 border-t border-rule pt-3">
      <p>
        <span className="text-muted">Next:</span> <strong>{dayStepTitle(next.step, next.known, brew.equipment)}</strong>
        {next.expected === null || day.startedAt === null ? null : (
          <>
            , <AboutTime startedAt={day.startedAt} time={next.expected.start} />
          </>
        )}
      </p>
      <StepFigures step={next.step} preferences={preferences} />
    </div>
  );
}
