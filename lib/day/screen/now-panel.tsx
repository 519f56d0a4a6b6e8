import type { ReactElement } from "react";
import type { DayStep } from "../plan/day-plan";
import { useDay } from "./day-context";
import type { OnEnter } from "./entry-bar";
import { NextLine } from "./next-line";
import { RunningStep } from "./running-step";
import { doneWords, dayStepTitle } from "./step-words";
import { StepBody } from "./step-body";
import type { Moves } from "./use-moves";

/** What now and what next, in the hand's reach. */
export function NowPanel({ onEnter, moves }: { readonly onEnter: OnEnter; readonly moves: Moves }): ReactElement {
  const { day, mayWrite } = useDay();
  const { running, next, startedAt } = day;
  const current = running.at(-1) ?? null;
  return (
    <section aria-labelledby="now">
      <h2 id="now" className="sr-only">
        Now
      </h2>
      {running.map((each) => (
        <RunningStep key={each.step.id} dayStep={each} onEnter={onEnter} moves={moves} />
      ))}
      {current === null && next !== null ? (
        <ToBegin next={next} isFirst={startedAt === null} onEnter={onEnter} />
      ) : null}
      {current === null && next === null ? <p className="text-lg">Everything on the sheet is done.</p> : null}
      {mayWrite && current !== null && next !== null ? (
        <button type="button" className="button button-quiet day-button-small mt-4" onClick={() => moves.done(current)}>
          {doneWords(current.step)}, and stop there
        </button>
      ) : null}
      {current !== null && next !== null ? <NextLine next={next} /> : null}
    </section>
  );
}

function ToBegin({
  next,
  isFirst,
  onEnter,
}: {
  readonly next: DayStep;
  readonly isFirst: boolean;
  readonly onEnter: OnEnter;
}): ReactElement {
  const { brew } = useDay();
  return (
    <div className="day-now">
      <p className="text-muted">{isFirst ? "The day begins with" : "Next"}</p>
      <h3 className="day-title">{dayStepTitle(next.step, next.known, brew.equipment)}</h3>
      <StepBody dayStep={next} onEnter={onEnter} />
    </div>
  );
}
