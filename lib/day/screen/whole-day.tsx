import type { ReactElement } from "react";
import type { DayStep } from "../plan/day-plan";
import { AddStep } from "./add-step";
import { useDay } from "./day-context";
import { DayStepItem } from "./day-step-item";
import type { OnEnter } from "./entry-bar";
import type { Moves } from "./use-moves";

/** Every step of the day with what became of it; any of them can be begun, confirmed, left out or taken back. */
export function WholeDay({ onEnter, moves }: { readonly onEnter: OnEnter; readonly moves: Moves }): ReactElement {
  const { day, mayWrite } = useDay();
  return (
    <section aria-labelledby="whole-day">
      <h2 id="whole-day">The whole day</h2>
      <ol className="mt-2 border-t border-ink">
        {day.steps.map((each: DayStep) => (
          <DayStepItem key={each.step.id} dayStep={each} moves={moves} onEnter={onEnter} />
        ))}
      </ol>
      {mayWrite ? <AddStep moves={moves} /> : null}
    </section>
  );
}
