import type { Course } from "./day-course";
import type { Records } from "./day-records";
import { after, certain, type Moment } from "./moment";
import { familyOf, paceOf, type Pace, type Run } from "./pace";
import { rampOutlook, type RampOutlook } from "./ramp";
import type { RampReading, Spread, StepState } from "./replan";
import type { Step } from "./step";

/** A step of the course that is not over. */
export interface Planned {
  readonly step: Step;
  readonly place: number;
  readonly state: StepState;
  readonly start: Moment;
  readonly end: Moment;
}

export interface RestOfDay {
  readonly planned: readonly Planned[];
  /** Place of the last step that has begun; −1 before the first. */
  readonly at: number;
  readonly heating: Pace;
  readonly cooling: Pace;
}

export interface DaySoFar {
  readonly course: Course;
  readonly records: Records;
  readonly nowMin: number;
  readonly readings: readonly RampReading[];
  readonly spread: Spread;
}

/** Cleaning begins whenever there is a hand free, so it tells nothing of the other steps. */
const isFree = (step: Step): boolean => step.name === "clean";

/**
 * Plans what is left of the course: each step begins when the one before it ends, and not before now.
 *
 * @returns Steps with start and end; or the ramp that does not heat.
 * @source Times of the sheet by the pace of the day (docs/sources.md#energy-balance)
 */
export function restOfDay(day: DaySoFar): RestOfDay | { readonly step: Step; readonly celsius: number } {
  const { course, records, nowMin } = day;
  const at = course.steps.findLastIndex((step) => !isFree(step) && records.get(step.id)?.kind === "begun");
  const outlook = outlookOf(day, at);
  const current = course.steps[at];
  if (current !== undefined && outlook.kind === "not heating") return { step: current, celsius: outlook.celsius };
  const heating = paceOf(day.spread.heating, [...runsOf(day, "heating"), ...runSoFar(day, at, outlook)]);
  const cooling = paceOf(day.spread.cooling, runsOf(day, "cooling"));
  const paces = { heating, cooling, hands: day.spread.hands };
  const planned: Planned[] = [];
  let cursor = certain(nowMin);
  course.steps.forEach((step, place) => {
    const known = records.get(step.id);
    if (known?.kind === "left out" || place < at) return;
    if (known?.kind === "begun") {
      // What takes no time is over as soon as it has begun.
      if (known.endMin !== null || step.minutes === 0) return;
      const start = certain(known.startMin);
      const usual = after(start, lengthOf(step, paces));
      const foreseen =
        outlook.kind === "arrives" && place === at
          ? { ...certain(outlook.endMin), variance: outlook.sdMin ** 2 }
          : usual;
      const end = { ...foreseen, min: Math.max(nowMin, foreseen.min) };
      planned.push({ step, place, state: foreseen.min < nowMin ? "overdue" : "running", start, end });
      if (place === at) cursor = end;
      return;
    }
    const end = after(cursor, lengthOf(step, paces));
    planned.push({ step, place, state: "to come", start: cursor, end });
    cursor = end;
  });
  return { planned, at, heating, cooling };
}

function lengthOf(
  { name, minutes }: Step,
  { heating, cooling, hands }: { readonly heating: Pace; readonly cooling: Pace; readonly hands: number },
): Partial<Moment> & { readonly min: number } {
  switch (familyOf(name)) {
    case "heating":
      return { min: minutes * heating.factor, heatingMin: minutes };
    case "cooling":
      return { min: minutes * cooling.factor, coolingMin: minutes };
    case "hands":
      return { min: minutes, variance: (minutes * hands) ** 2 };
    case "timed":
      return { min: minutes };
  }
}

/** Runs of one family that are over. */
function runsOf({ course, records }: DaySoFar, family: "heating" | "cooling"): Run[] {
  return course.steps.flatMap((step): Run[] => {
    const known = records.get(step.id);
    if (familyOf(step.name) !== family || known?.kind !== "begun" || known.endMin === null) return [];
    return [{ plannedMin: step.minutes, tookMin: known.endMin - known.startMin, sdMin: 0 }];
  });
}

/** The ramp that is going on, as far as its temperature tells how long it will have taken. */
function runSoFar({ course, records }: DaySoFar, at: number, outlook: RampOutlook): Run[] {
  const step = course.steps[at];
  const known = step === undefined ? undefined : records.get(step.id);
  if (step === undefined || known?.kind !== "begun" || outlook.kind !== "arrives") return [];
  return [{ plannedMin: step.minutes, tookMin: outlook.endMin - known.startMin, sdMin: outlook.sdMin }];
}

function outlookOf({ course, records, readings }: DaySoFar, at: number): RampOutlook {
  const step = course.steps[at];
  const known = step === undefined ? undefined : records.get(step.id);
  const open = known?.kind === "begun" && known.endMin === null ? known.startMin : null;
  if (step === undefined || step.celsius === null || open === null || familyOf(step.name) !== "heating") {
    return { kind: "too early to tell" };
  }
  const fromC = startTemperature(course.steps, at);
  if (fromC === null) return { kind: "too early to tell" };
  return rampOutlook({ startMin: open, plannedMin: step.minutes, fromC, toC: step.celsius }, readings);
}

/** Strike water begins as it was filled, for a second mash too; everything else as the step before left it. */
function startTemperature(steps: readonly Step[], at: number): number | null {
  const before = steps.slice(0, at);
  const from =
    steps[at]?.name === "heat strike water"
      ? before.find(({ name }) => name === "fill")
      : before.findLast(({ celsius }) => celsius !== null);
  return from?.celsius ?? null;
}
