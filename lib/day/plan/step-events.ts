import type { Step, StepName } from "@/lib/calc/runsheet";
import type { StepAct, TimerAct } from "@/lib/model/log/log-event";

const MINUTE_MS = 60_000;

/** Says what was done with a step. */
export function stepAct(
  step: string,
  act: StepAct["act"],
  said: Partial<Pick<StepAct, "why" | "title" | "minutes" | "after">> = {},
): StepAct {
  return { kind: "step", step, act, why: "", title: "", minutes: 0, after: null, ...said };
}

export function timerAct(
  timer: string,
  act: TimerAct["act"],
  said: Partial<Pick<TimerAct, "label" | "dueAt" | "step">> = {},
): TimerAct {
  return { kind: "timer", timer, act, label: "", dueAt: null, step: null, ...said };
}

/** What goes on by itself while the brewer does something else. Whoever works with their hands needs no alarm for it. */
const RINGS: ReadonlySet<StepName> = new Set<StepName>([
  "heat strike water",
  "rest",
  "heat between rests",
  "heat to the boil",
  "boil",
  "cool to the stand",
  "stand",
  "chill",
]);

/** What an alarm is called while a step goes on. */
export interface AlarmWords {
  readonly end: (step: Step) => string;
  readonly addition: (step: Step) => string;
}

/**
 * The alarms of a step that begins now: at its end, and at each addition during it. They are instants, so that a phone
 * that was off, or another phone, rings at the same moment; beginning a boil late moves its additions with it.
 */
export function alarmsOf(step: Step, sheet: readonly Step[], begunAt: number, words: AlarmWords): TimerAct[] {
  if (step.minutes === 0 || !RINGS.has(step.name)) return [];
  const endAt = begunAt + step.minutes * MINUTE_MS;
  const end = timerAct(`end-${step.id}`, "set", {
    label: words.end(step),
    dueAt: new Date(endAt).toISOString(),
    step: step.id,
  });
  const additions = additionsOf(step, sheet).map((each) => {
    const beforeEnd = step.startMin + step.minutes - each.startMin;
    const dueAt = new Date(Math.max(begunAt, endAt - beforeEnd * MINUTE_MS)).toISOString();
    return timerAct(`at-${each.id}`, "set", { label: words.addition(each), dueAt, step: each.id });
  });
  return [...additions, end];
}

/** What goes in during a boil or a stand: what stands behind it on the sheet, before the next of the course. */
export function additionsOf(step: Step, sheet: readonly Step[]): readonly Step[] {
  if (step.name !== "boil" && step.name !== "stand") return [];
  const at = sheet.findIndex(({ id }) => id === step.id);
  const following = sheet.slice(at + 1);
  const end = following.findIndex(({ name }) => !["hop addition", "hot-break watch", "extra"].includes(name));
  return following.slice(0, end === -1 ? following.length : end).filter(({ name }) => name === "hop addition");
}

/** The alarms that a step has set, for when it is taken back or ends early. */
export function clearedAlarms(step: Step, sheet: readonly Step[]): TimerAct[] {
  if (step.minutes === 0) return [timerAct(`at-${step.id}`, "cleared", { step: step.id })];
  const additions = additionsOf(step, sheet).map(({ id }) => timerAct(`at-${id}`, "cleared", { step: id }));
  return [...additions, timerAct(`end-${step.id}`, "cleared", { step: step.id })];
}
