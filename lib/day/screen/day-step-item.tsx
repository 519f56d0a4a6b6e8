import { useId, useState, type ReactElement, type SubmitEvent } from "react";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { TextField } from "@/lib/ui/text-field";
import { isOver, isRunning, type DayStep } from "../plan/day-plan";
import { AboutTime } from "./about-time";
import { useDay } from "./day-context";
import type { OnEnter } from "./entry-bar";
import { StepBody } from "./step-body";
import { doneWords, dayStepTitle } from "./step-words";
import type { Moves } from "./use-moves";

interface DayStepItemProps {
  readonly dayStep: DayStep;
  readonly moves: Moves;
  readonly onEnter: OnEnter;
}

/** One line of the day, which opens to everything that can be done with it. */
export function DayStepItem({ dayStep, moves, onEnter }: DayStepItemProps): ReactElement {
  const { brew, mayWrite } = useDay();
  const [isOpen, setOpen] = useState(false);
  const { step, known } = dayStep;
  return (
    <li className="max-w-none border-b border-rule">
      <details open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary className="target w-full">
          <span className={isOver(dayStep) ? "text-muted" : "font-semibold"}>
            {dayStepTitle(step, known, brew.equipment)}
          </span>{" "}
          <StepState dayStep={dayStep} />
        </summary>
        {isOpen ? (
          <div className="flex flex-col gap-3 pb-4">
            <StepBody dayStep={dayStep} onEnter={onEnter} />
            {mayWrite ? <StepButtons dayStep={dayStep} moves={moves} /> : null}
          </div>
        ) : null}
      </details>
    </li>
  );
}

/** When it was or will be, in words. */
function StepState({ dayStep }: { readonly dayStep: DayStep }): ReactElement | null {
  const { day } = useDay();
  const { known, expected, isOvertaken } = dayStep;
  if (known !== null && known.leftOut !== null) {
    return <span className="text-muted">left out{known.leftOut.why === "" ? "" : `: ${known.leftOut.why}`}</span>;
  }
  const at = known?.doneAt ?? known?.begunAt ?? null;
  if (at !== null && isOver(dayStep)) {
    return (
      <span className="text-muted">
        done <ClockTime at={new Date(at)} />, {known?.byName}
        {known?.isSafe === true ? "" : ", on this device only"}
      </span>
    );
  }
  if (at !== null && isRunning(dayStep)) {
    return (
      <strong>
        since <ClockTime at={new Date(at)} />
      </strong>
    );
  }
  if (isOvertaken && dayStep.step.name === "hot-break watch") return null;
  if (isOvertaken) return <span className="text-muted">not confirmed; later steps have begun</span>;
  if (expected === null || day.startedAt === null) return null;
  return (
    <span className="text-muted">
      <AboutTime startedAt={day.startedAt} time={expected.start} />
    </span>
  );
}

function StepButtons({ dayStep, moves }: { readonly dayStep: DayStep; readonly moves: Moves }): ReactElement {
  const [isLeaving, setLeaving] = useState(false);
  const isUntouched = !isOver(dayStep) && !isRunning(dayStep);
  const isMarked = dayStep.known !== null && (dayStep.known.begunAt !== null || dayStep.known.leftOut !== null);
  return (
    <div className="flex flex-wrap gap-3">
      {(isUntouched || dayStep.isOvertaken) && dayStep.step.minutes > 0 ? (
        <button type="button" className="button day-button-small" onClick={() => moves.begin(dayStep)}>
          Begin now
        </button>
      ) : null}
      {!isOver(dayStep) || dayStep.isOvertaken ? (
        <button type="button" className="button button-quiet day-button-small" onClick={() => moves.done(dayStep)}>
          {doneWords(dayStep.step)}
        </button>
      ) : null}
      {!isOver(dayStep) || dayStep.isOvertaken ? (
        <button
          type="button"
          className="button button-quiet day-button-small"
          aria-expanded={isLeaving}
          onClick={() => setLeaving(!isLeaving)}
        >
          Leave out…
        </button>
      ) : null}
      {isMarked ? (
        <button type="button" className="button button-quiet day-button-small" onClick={() => moves.takeBack(dayStep)}>
          Take back
        </button>
      ) : null}
      {isLeaving ? <LeaveOut dayStep={dayStep} moves={moves} onDone={() => setLeaving(false)} /> : null}
    </div>
  );
}

function LeaveOut({
  dayStep,
  moves,
  onDone,
}: {
  readonly dayStep: DayStep;
  readonly moves: Moves;
  readonly onDone: () => void;
}): ReactElement {
  const name = useId();
  const [why, setWhy] = useState("");
  const [error, setError] = useState<string | undefined>(undefined);
  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    if (why.trim() === "") {
      setError("Reason is empty; write why this step is left out");
      return;
    }
    moves.leaveOut(dayStep, why.trim().slice(0, 500));
    onDone();
  }
  return (
    <form onSubmit={submit} noValidate className="flex basis-full flex-col items-start gap-3">
      <TextField
        name={`why-${name}`}
        label="Why it is left out"
        value={why}
        maxLength={500}
        onChange={(event) => setWhy(event.target.value)}
        error={error}
      />
      <button type="submit" className="button day-button-small">
        Leave it out
      </button>
    </form>
  );
}
