import type { ReactElement } from "react";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { StepFigures } from "@/lib/ui/brew/step-figures";
import type { DayStep } from "../plan/day-plan";
import { useDay } from "./day-context";
import { TimeLeft } from "./time-left";
import type { Moves } from "./use-moves";

const MINUTE_MS = 60_000;

/** One addition of a boil or a stand that is not in yet. */
export function AdditionLine({
  dayStep,
  moves,
}: {
  readonly dayStep: DayStep;
  readonly moves: Moves | null;
}): ReactElement {
  const { day, log, preferences } = useDay();
  const { step, expected } = dayStep;
  const timer = log.timers.get(`at-${step.id}`);
  const planned = expected === null || day.startedAt === null ? null : day.startedAt + expected.start.min * MINUTE_MS;
  const at = timer !== undefined && !timer.isCleared ? timer.dueAt : planned;
  return (
    <li className="flex flex-wrap items-center justify-between gap-x-4 gap-y-1 py-2">
      <div className="min-w-40 flex-1">
        <StepFigures step={{ ...step, celsius: null }} preferences={preferences} />
      </div>
      {at === null ? null : (
        <p>
          <ClockTime at={new Date(at)} /> <TimeLeft until={at} className="text-xl font-bold" />
        </p>
      )}
      {moves === null ? null : (
        <button type="button" className="button day-button-small" onClick={() => moves.done(dayStep)}>
          Added<span className="sr-only"> {step.amounts.map(({ name }) => name).join(", ")}</span>
        </button>
      )}
    </li>
  );
}
