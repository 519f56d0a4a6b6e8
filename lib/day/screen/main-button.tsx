import type { ReactElement } from "react";
import { useDay } from "./day-context";
import { dayStepTitle, doneWords } from "./step-words";
import type { Moves } from "./use-moves";

/** One tap confirms what was seen and begins what follows; a tap too many can be undone for a while. */
export function MainButton({ moves }: { readonly moves: Moves }): ReactElement | null {
  const { brew, day } = useDay();
  const current = day.running.at(-1) ?? null;
  const { next } = day;
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
      <p role="status" className="day-bar-status">
        {moves.undo === null ? null : (
          <button type="button" className="button-link" onClick={moves.undo}>
            Undo the last tap
          </button>
        )}
        {moves.problem === null ? null : <span className="field-error">{moves.problem}</span>}
      </p>
    </>
  );
}
