import {
  replanRunSheet,
  USUAL_SPREAD,
  type RampReading,
  type Replan,
  type ReplannedStep,
  type Step,
} from "@/lib/calc/runsheet";
import { OutOfRangeError } from "@/lib/calc/errors";
import type { DayBrew } from "@/lib/model/day-sheet";
import type { BrewLog } from "@/lib/model/log/project-log";
import { stepRecords, type LoggedStep } from "@/lib/model/log/step-log";
import { sheetWithAdded } from "./added-steps";
import { additionsOf } from "./step-events";

const MINUTE_MS = 60_000;
const LONGEST_DAY_MS = 2 * 24 * 60 * MINUTE_MS;

/** Where one step of the day stands. */
export interface DayStep {
  readonly step: Step;
  readonly known: LoggedStep | null;
  /** When it is now expected; null for a step that is over, left out or overtaken. */
  readonly expected: ReplannedStep | null;
  /** Later steps have begun, and nobody said what became of this one. */
  readonly isOvertaken: boolean;
}

/** The day as it is at one moment. */
export interface DayPlan {
  readonly steps: readonly DayStep[];
  /** ms since 1970; null before the first step has begun. */
  readonly startedAt: number | null;
  /** What is left of the day; null where it has not begun, or is over a day ago. */
  readonly replan: Replan | null;
  /** Under way now, the one that the day hangs on last. */
  readonly running: readonly DayStep[];
  /** The step that would be begun next. */
  readonly next: DayStep | null;
  /** What goes into the boil or the stand that is under way, and is not in yet; the next one first. */
  readonly additions: readonly DayStep[];
}

/** Plans the rest of the day from what the log knows. */
export function dayPlan(brew: DayBrew, log: BrewLog, now: number): DayPlan {
  const sheet = sheetWithAdded(brew.runSheet, log.steps);
  const startedAt = startOf(brew, log, sheet);
  const replan = startedAt === null ? null : replanned({ sheet, log, startedAt, now });
  const expected = new Map(replan?.ok === true ? replan.steps.map((step) => [step.id, step]) : []);
  const overtaken = new Set(replan?.ok === true ? replan.passed : []);
  const steps = sheet.map((step): DayStep => ({
    step,
    known: log.steps.get(step.id) ?? null,
    expected: expected.get(step.id) ?? null,
    isOvertaken: overtaken.has(step.id) || (step.name === "hot-break watch" && isFoamDown(step, replan)),
  }));
  const running = steps.filter(isRunning);
  const going = new Set(running.flatMap((each) => additionsOf(each.step, sheet).map(({ id }) => id)));
  const additions = steps.filter((each) => going.has(each.step.id) && !isOver(each));
  const next = steps.find((each) => isToCome(each) && !going.has(each.step.id)) ?? null;
  return { steps, startedAt, replan, running, next, additions };
}

/** Nobody confirms the watch over the foam; it is over when the plan has none left. */
function isFoamDown({ id }: Step, replan: Replan | null): boolean {
  return replan?.ok === true && replan.steps.every((left) => left.id !== id);
}

/** Begun and not over. What takes no time is over as soon as it is begun. */
export function isRunning({ step, known }: DayStep): boolean {
  if (known === null || known.begunAt === null || known.doneAt !== null) return false;
  return step.minutes > 0;
}

export function isOver({ step, known, isOvertaken }: DayStep): boolean {
  if (known === null) return isOvertaken;
  if (known.doneAt !== null || known.leftOut !== null) return true;
  return known.begunAt !== null ? step.minutes === 0 : isOvertaken;
}

function isToCome(each: DayStep): boolean {
  // The watch over the foam goes along with the heating; nobody begins it.
  return !isOver(each) && !isRunning(each) && each.step.name !== "hot-break watch";
}

/** The day begins with its first step; the server may know of it before this device does. */
function startOf(brew: DayBrew, log: BrewLog, sheet: readonly Step[]): number | null {
  const ids = new Set(sheet.map(({ id }) => id));
  const begun = [...log.steps.values()].flatMap(({ step, begunAt }) =>
    ids.has(step) && begunAt !== null ? [begunAt] : [],
  );
  const first = begun.length === 0 ? null : Math.min(...begun);
  const told = brew.startedAt === null ? null : Date.parse(brew.startedAt);
  return first ?? told;
}

function replanned(a: {
  readonly sheet: readonly Step[];
  readonly log: BrewLog;
  readonly startedAt: number;
  readonly now: number;
}): Replan | null {
  const { sheet, log, startedAt } = a;
  const now = Math.max(a.now, startedAt);
  if (now - startedAt > LONGEST_DAY_MS) return null;
  const ids = new Set(sheet.map(({ id }) => id));
  const done = stepRecords(log.steps, startedAt, now).filter(({ step }) => ids.has(step));
  try {
    return replanRunSheet({
      steps: sheet,
      done,
      nowMin: (now - startedAt) / MINUTE_MS,
      readings: rampReadings(log, startedAt, now),
      spread: USUAL_SPREAD,
    });
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

function rampReadings(log: BrewLog, startedAt: number, now: number): RampReading[] {
  return log.readings
    .filter(({ measured, isVoid, at }) => measured.quantity === "kettle.temperature" && !isVoid && at >= startedAt)
    .filter(({ at }) => at <= now)
    .map(({ measured, at }) => ({ atMin: (at - startedAt) / MINUTE_MS, celsius: measured.value }));
}
