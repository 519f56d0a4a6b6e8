import type { ReactElement } from "react";
import type { DayStep } from "../plan/day-plan";
import { useDay, useOfDayTime } from "./day-context";
import { dayStepTitle, doneWords } from "./step-words";
import type { Moves } from "./use-moves";

/** An addition is offered from so long before its time. */
const SOON_MS = 3 * 60_000;

/** One tap confirms what was seen and begins what follows; a tap too many can be undone for a while. */
export function MainButton({ moves }: { readonly moves: Moves }): ReactElement | null {
  const { brew, day, log } = useDay();
  const current = day.running.at(-1) ?? null;
  const { next } = day;
  const addition = day.additions[0] ?? null;
  const timer = addition === null ? undefined : log.timers.get(`at-${addition.step.id}`);
  // Near its time, what goes in comes before the end of what it goes into.
  const isNear = useOfDayTime((now) => timer === undefined || timer.dueAt - now < SOON_MS);
  const isAdding = addition !== null && isNear;
  if (current !== null && isAdding) return <Adding addition={addition} moves={moves} />;
  const title = next === null ? "" : dayStepTitle(next.step, next.known, brew.equipment);
  return (
    <>
      {current !== null && next !== null ? (
        <button type="button" className="button day-button" onClick={() => moves.goOn(current, next)}>
          {doneWords(current.step)}: {title}
        </button>
      ) : null}
      {current !== null && next === null ? (
        <button type="button" className="button day-button" onClick={() => moves.done(current)}>
          {doneWords(current.step)}
        </button>
      ) : null}
      {current === null && next !== null ? (
        <button type="button" className="button day-button" onClick={() => moves.begin(next)}>
          {next.step.minutes === 0 ? `${doneWords(next.step)}: ${title}` : `Begin: ${title}`}
        </button>
      ) : null}
      <Undo moves={moves} />
    </>
  );
}

function Adding({ addition, moves }: { readonly addition: DayStep; readonly moves: Moves }): ReactElement {
  const names = addition.step.amounts.map(({ name }) => name).join(", ");
  return (
    <>
      <button type="button" className="button day-button" onClick={() => moves.done(addition)}>
        {doneWords(addition.step)}: {names}
      </button>
      <Undo moves={moves} />
    </>
  );
}

function Undo({ moves }: { readonly moves: Moves }): ReactElement {
  return (
    <p role="status" className="day-bar-status">
      {moves.undo === null ? null : (
        <button type="button" className="button-link" onClick={moves.undo}>
          Undo the last tap
        </button>
      )}
      {moves.problem === null ? null : <span className="field-error">{moves.problem}</span>}
    </p>
  );
}
