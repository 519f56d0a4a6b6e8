import { requireInRange } from "../errors";
import { celsius, minutes } from "../units";
import { companionTimes } from "./companion-times";
import { courseOf } from "./day-course";
import { recordsOf } from "./day-records";
import { expectedTime, type Moment } from "./moment";
import { SPREAD_RANGE } from "./pace";
import type { ExpectedTime, RampReading, Replan, ReplannedStep, Spread, StepRecord, StepState } from "./replan";
import { restOfDay, type DaySoFar, type RestOfDay } from "./rest-of-day";
import type { Step } from "./step";

/**
 * Plans the rest of a brew day anew from what has really happened, with an 80 % interval for every time.
 *
 * Each step begins when the one before it ends: a rest when its temperature is reached, the boil when it boils, and
 * additions by the end of the real boil. Heating and chilling are stretched by the pace of those that are over today, and
 * a temperature read in a ramp tells when that one arrives. Boils, rests and stands are as long as the recipe says. A
 * step without a record that a later one has overtaken counts as done; an addition does not, and is named.
 *
 * @param a.steps - The run sheet.
 * @param a.done - What has begun, ended or been left out; the last record of a step counts.
 * @param a.nowMin - The time of day, minutes from the start of the sheet.
 * @param a.readings - Temperatures read in the ramp that is going on; others are left aside.
 * @param a.spread - How far lengths of steps usually are from the sheet, `USUAL_SPREAD` for a kettle that is not known better.
 * @returns The steps that are left, running ones included, with the additions missed, the time of pitching and the end of
 * the day; or that the ramp does not heat, or a record of a step that the sheet does not have.
 * @validRange Days of up to 1 000 000 minutes; times to the minute at best, as the sheet knows no brewer.
 * @throws {@link OutOfRangeError} when a time lies ahead or runs backwards, or a number is outside its range.
 * @source Energy balance for the ramps (docs/sources.md#energy-balance); lengths of handwork are common practice
 * (docs/sources.md#trade-practice); JCGM 100:2008 for the intervals (docs/sources.md#jcgm-100-2008)
 * @example
 * const done = [{ step: "boil-1", startMin: 205, endMin: null }];
 * replanRunSheet({ steps, done, nowMin: 240, readings: [], spread: USUAL_SPREAD }); // { ok: true, pitch: { min: 322, … }, … }
 */
export function replanRunSheet(a: {
  readonly steps: readonly Step[];
  readonly done: readonly StepRecord[];
  readonly nowMin: number;
  readonly readings: readonly RampReading[];
  readonly spread: Spread;
}): Replan {
  const { steps, nowMin } = a;
  const records = recordsOf(steps, a.done, nowMin);
  if ("unknown" in records) return { ok: false, reason: "no-such-step", step: records.unknown };
  requireNumbers(a);
  const course = courseOf(steps);
  const day: DaySoFar = { ...a, course, records };
  const rest = restOfDay(day);
  if ("celsius" in rest) return { ok: false, reason: "not-heating", step: rest.step.id, celsius: rest.celsius };
  const companions = companionTimes(day, rest);
  const left = [...rest.planned, ...companions.planned].map((each) => replanned(each, rest, nowMin));
  const plannedEndMin = steps.reduce((latest, step) => Math.max(latest, step.startMin + step.minutes), 0);
  const end = endOfDay(day, rest);
  const pitching = left.find(({ name }) => name === "pitch");
  return {
    ok: true,
    steps: left.sort((one, other) => one.startMin - other.startMin),
    missed: companions.missed,
    passed: course.steps.flatMap(({ id }, place) => (place < rest.at && !records.has(id) ? [id] : [])),
    pitch: pitching?.start ?? null,
    end,
    behindMin: end.min - plannedEndMin,
    heatingPace: rest.heating.factor,
  };
}

function requireNumbers({ steps, readings, spread, nowMin }: Parameters<typeof replanRunSheet>[0]): void {
  for (const step of steps) {
    requireInRange(`start of ${step.id} on the sheet`, step.startMin, minutes.range);
    requireInRange(`length of ${step.id}`, step.minutes, minutes.range);
  }
  for (const reading of readings) {
    requireInRange("time of a reading", reading.atMin, { unit: "min", min: 0, max: nowMin });
    requireInRange("temperature read", reading.celsius, celsius.range);
  }
  for (const name of ["heating", "cooling", "hands"] as const) {
    requireInRange(`spread of ${name}`, spread[name], SPREAD_RANGE);
  }
}

function replanned(
  {
    step,
    state,
    start,
    end,
  }: { readonly step: Step; readonly state: StepState; readonly start: Moment; readonly end: Moment },
  { heating, cooling }: RestOfDay,
  nowMin: number,
): ReplannedStep {
  const begins = expectedTime(start, heating, cooling, nowMin);
  const ends = expectedTime(end, heating, cooling, nowMin);
  return { ...step, startMin: begins.min, minutes: ends.min - begins.min, state, start: begins, end: ends };
}

/** The latest end of what is left; with nothing left, of what is over. */
function endOfDay({ records, nowMin }: DaySoFar, { planned, heating, cooling }: RestOfDay): ExpectedTime {
  const last = planned.reduce<Moment | null>(
    (latest, { end }) => (latest === null || end.min >= latest.min ? end : latest),
    null,
  );
  if (last !== null) return expectedTime(last, heating, cooling, nowMin);
  let min = 0;
  for (const known of records.values()) {
    if (known.kind === "begun") min = Math.max(min, known.endMin ?? known.startMin);
  }
  return { min, low80: min, high80: min };
}
