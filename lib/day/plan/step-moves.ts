import type { Step } from "@/lib/calc/runsheet";
import type { EventContent } from "@/lib/model/log/log-event";
import type { DayPlan, DayStep } from "./day-plan";
import { alarmsOf, clearedAlarms, stepAct, type AlarmWords } from "./step-events";

/** The sheet as plain steps, for the alarms of one of them. */
const sheetOf = (day: DayPlan): readonly Step[] => day.steps.map(({ step }) => step);

/** Begins a step and sets its alarms; a step without a length is done at once. */
export function begin(day: DayPlan, { step }: DayStep, now: number, words: AlarmWords): readonly EventContent[] {
  if (step.minutes === 0) return done(day, { step });
  return [stepAct(step.id, "begun"), ...alarmsOf(step, sheetOf(day), now, words)];
}

/** Confirms that a step is over; what it would still have rung for is cleared. */
export function done(day: DayPlan, { step }: Pick<DayStep, "step">): readonly EventContent[] {
  return [stepAct(step.id, "done"), ...clearedAlarms(step, sheetOf(day))];
}

export function leaveOut(day: DayPlan, { step }: DayStep, why: string): readonly EventContent[] {
  return [stepAct(step.id, "left out", { why }), ...clearedAlarms(step, sheetOf(day))];
}

/** Opens a step again as if nobody had touched it. */
export function takeBack(day: DayPlan, { step }: DayStep): readonly EventContent[] {
  return [stepAct(step.id, "taken back"), ...clearedAlarms(step, sheetOf(day))];
}

/** Only alarms that are set can be cleared; the others would only fill the log. */
export function withoutIdle(
  contents: readonly EventContent[],
  openTimers: ReadonlySet<string>,
): readonly EventContent[] {
  return contents.filter((each) => each.kind !== "timer" || each.act !== "cleared" || openTimers.has(each.timer));
}
