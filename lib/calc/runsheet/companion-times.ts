import type { Companion } from "./day-course";
import { after, certain, type Moment } from "./moment";
import type { MissedAddition, StepState } from "./replan";
import type { DaySoFar, RestOfDay } from "./rest-of-day";
import type { Step } from "./step";

/** A companion that is still to be done. */
export interface PlannedCompanion {
  readonly step: Step;
  readonly state: StepState;
  readonly start: Moment;
  readonly end: Moment;
}

export interface Companions {
  readonly planned: readonly PlannedCompanion[];
  readonly missed: readonly MissedAddition[];
}

/**
 * Times what goes along with boil and stand: additions from their real end, the watch from the real beginning.
 *
 * @returns What is still to be done, and the additions whose time is over.
 */
export function companionTimes(day: DaySoFar, rest: RestOfDay): Companions {
  const planned: PlannedCompanion[] = [];
  const missed: MissedAddition[] = [];
  for (const companion of day.course.companions) {
    const { step } = companion;
    const known = day.records.get(step.id);
    const isOver = known?.kind === "left out" || (known?.kind === "begun" && known.endMin !== null);
    if (isOver) continue;
    if (step.name === "hot-break watch") planned.push(...watch(day, rest, companion));
    else if (known === undefined) {
      const { late, due } = addition(day, rest, companion);
      if (late !== null) missed.push(late);
      planned.push(...due);
    }
  }
  return { planned, missed };
}

function watch(day: DaySoFar, rest: RestOfDay, { step, of }: Companion): PlannedCompanion[] {
  const boil = day.course.steps[of];
  const span = spanOf(day, rest, of);
  if (boil === undefined || span === null || of < rest.at) return [];
  const start = after(span.start, { min: step.startMin - boil.startMin });
  const end = after(start, { min: step.minutes });
  if (end.min <= day.nowMin) return [];
  return [{ step, state: start.min <= day.nowMin ? "running" : "to come", start, end }];
}

function addition(
  day: DaySoFar,
  rest: RestOfDay,
  { step, of }: Companion,
): { readonly late: MissedAddition | null; readonly due: readonly PlannedCompanion[] } {
  const parent = day.course.steps[of];
  const span = spanOf(day, rest, of);
  const names = step.amounts.map(({ name }) => name);
  const beforeEnd = (parent?.startMin ?? 0) + (parent?.minutes ?? 0) - step.startMin;
  if (span === null) {
    // What it goes into was left out or has gone by without a record; the sheet's own time is the only one there is.
    return { late: { step: step.id, names, dueMin: step.startMin, possible: false }, due: [] };
  }
  const at = after(span.end, { min: -beforeEnd });
  const possible = of >= rest.at;
  if (possible && at.min >= day.nowMin) return { late: null, due: [{ step, state: "to come", start: at, end: at }] };
  const late = { step: step.id, names, dueMin: at.min, possible };
  const now = certain(day.nowMin);
  return { late, due: possible ? [{ step, state: "late", start: now, end: now }] : [] };
}

/** When the boil or the stand began, or will, and when it ends; null where it does not take place. */
function spanOf(
  { course, records }: DaySoFar,
  { planned }: RestOfDay,
  of: number,
): { readonly start: Moment; readonly end: Moment } | null {
  const ahead = planned.find(({ place }) => place === of);
  if (ahead !== undefined) return ahead;
  const step = course.steps[of];
  const known = step === undefined ? undefined : records.get(step.id);
  if (step === undefined || known?.kind !== "begun") return null;
  const start = certain(known.startMin);
  return { start, end: certain(known.endMin ?? known.startMin + step.minutes) };
}
