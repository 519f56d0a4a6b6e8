import type { ReactElement } from "react";
import type { DayStep } from "../plan/day-plan";
import { useDay } from "./day-context";
import type { OnEnter } from "./entry-bar";
import { NextLine } from "./next-line";
import { RunningStep } from "./running-step";
import { doneWords, dayStepTitle } from "./step-words";
import { StepBody } from "./step-body";
import { useMoves, type Moves } from "./use-moves";

/** What now and what next, in the hand's reach. */
export function NowPanel({ onEnter }: { readonly onEnter: OnEnter }): ReactElement {
  const { day, mayWrite } = useDay();
  const moves = useMoves();
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
      {mayWrite ? <MainButtons current={current} next={next} moves={moves} /> : null}
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

/** One tap confirms what was seen and begins what follows; a second button stops there. */
function MainButtons({
  current,
  next,
  moves,
}: {
  readonly current: DayStep | null;
  readonly next: DayStep | null;
  readonly moves: Moves;
}): ReactElement {
  const { brew } = useDay();
  const title = next === null ? "" : dayStepTitle(next.step, next.known, brew.equipment);
  return (
    <div className="mt-4 flex flex-col gap-3">
      {current === null ? null : (
        <>
          {next === null ? null : (
            <button type="button" className="button day-button" onClick={() => moves.goOn(current, next)}>
              {doneWords(current.step)}: {title}
            </button>
          )}
          <button
            type="button"
            className={next === null ? "button day-button" : "button button-quiet day-button"}
            onClick={() => moves.done(current)}
          >
            {doneWords(current.step)}
            {next === null ? "" : ", and stop there"}
          </button>
        </>
      )}
      {current === null && next !== null ? (
        <button type="button" className="button day-button" onClick={() => moves.begin(next)}>
          {next.step.minutes === 0 ? doneWords(next.step) : `Begin: ${title}`}
        </button>
      ) : null}
      <p role="status">
        {moves.undo === null ? null : (
          <button type="button" className="button-link" onClick={moves.undo}>
            Undo the last tap
          </button>
        )}
        {moves.problem === null ? null : <span className="field-error">{moves.problem}</span>}
      </p>
    </div>
  );
}
