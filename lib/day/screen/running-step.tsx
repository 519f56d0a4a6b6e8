import type { ReactElement } from "react";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import type { DayStep } from "../plan/day-plan";
import { AboutTime } from "./about-time";
import { AdditionLine } from "./addition-line";
import { useDay } from "./day-context";
import type { OnEnter } from "./entry-bar";
import { StepBody } from "./step-body";
import { dayStepTitle } from "./step-words";
import { TimeLeft } from "./time-left";
import type { Moves } from "./use-moves";

const MINUTE_MS = 60_000;

interface RunningStepProps {
  readonly dayStep: DayStep;
  readonly onEnter: OnEnter;
  readonly moves: Moves;
}

/** A step that goes on: how long still, in digits for across the room, and everything it asks for. */
export function RunningStep({ dayStep, onEnter, moves }: RunningStepProps): ReactElement {
  const { brew, day, log, now, mayWrite } = useDay();
  const { step, known } = dayStep;
  const begunAt = known?.begunAt ?? now;
  const alarm = log.timers.get(`end-${step.id}`);
  const endAt = alarm !== undefined && !alarm.isCleared ? alarm.dueAt : begunAt + step.minutes * MINUTE_MS;
  const toAdd = step.name === "boil" || step.name === "stand" ? day.additions : [];
  return (
    <div className="day-now">
      <p className="text-muted">
        Now, since <ClockTime at={new Date(begunAt)} />
      </p>
      <h3 className="day-title">{dayStepTitle(step, known, brew.equipment)}</h3>
      <p>
        <TimeLeft until={endAt} className="day-count" overClassName="day-count day-count-over" />
      </p>
      <Expected dayStep={dayStep} />
      <StepBody dayStep={dayStep} onEnter={onEnter} />
      {toAdd.length === 0 ? null : (
        <ul className="list-ruled mt-3" aria-label="To go in">
          {toAdd.map((each) => (
            <AdditionLine key={each.step.id} dayStep={each} moves={mayWrite ? moves : null} />
          ))}
        </ul>
      )}
    </div>
  );
}

/** When it should be over; a heater or a chiller takes as long as it takes. */
function Expected({ dayStep }: { readonly dayStep: DayStep }): ReactElement | null {
  const { day } = useDay();
  const { expected } = dayStep;
  if (expected === null || day.startedAt === null) return null;
  return (
    <p>
      {expected.state === "overdue" ? "Should be over by now; still going at " : "Until "}
      <AboutTime startedAt={day.startedAt} time={expected.end} />
    </p>
  );
}
