import type { RampReading, Replan, Spread, Step, StepRecord } from "@/lib/calc/runsheet";
import { replanRunSheet, USUAL_SPREAD } from "@/lib/calc/runsheet";

const step = (name: Step["name"], startMin: number, minutes: number, celsius: number | null = null): Step => ({
  id: `${name.replaceAll(" ", "-")}-1`,
  name,
  startMin,
  minutes,
  celsius,
  litres: null,
  powerW: null,
  amounts: [],
  measure: [],
  cautions: [],
});

const hop = (id: string, startMin: number): Step => ({
  ...step("hop addition", startMin, 0, 100),
  id,
  amounts: [{ name: "Perle", value: 20, unit: "g" }],
});

/** A brew day with round numbers: pitching at 300, the end at 340. */
export const DAY: readonly Step[] = [
  step("weigh out", 0, 10),
  step("fill", 10, 10, 12),
  step("heat strike water", 20, 40, 72),
  step("dough in", 60, 10, 66),
  step("rest", 70, 60, 66),
  step("lift and drain", 130, 15, 66),
  step("heat to the boil", 145, 30, 100),
  step("hot-break watch", 170, 10, 100),
  step("boil", 175, 60, 100),
  hop("bitter", 175),
  hop("late", 225),
  step("cool to the stand", 235, 5, 80),
  step("stand", 240, 20, 79),
  hop("aroma", 240),
  step("chill", 260, 25, 20),
  step("transfer", 285, 15, 20),
  step("pitch", 300, 0, 19),
  step("clean", 300, 40),
];

/** A record of a step by its name or id; no end while it goes on, no start when it was left out. */
export const record = (name: string, startMin: number | null, endMin: number | null = null): StepRecord => ({
  step: DAY.some(({ id }) => id === name) ? name : `${name.replaceAll(" ", "-")}-1`,
  startMin,
  endMin,
});

/** Everything up to a step done as it stands on the sheet. */
export function doneUntil(name: Step["name"]): StepRecord[] {
  const from = DAY.findIndex((each) => each.name === name);
  const nowMin = DAY[from]?.startMin ?? 0;
  return DAY.slice(0, from).map(({ id, startMin, minutes }) => ({
    step: id,
    startMin,
    endMin: Math.min(nowMin, startMin + minutes),
  }));
}

export const replan = (
  nowMin: number,
  done: readonly StepRecord[],
  a: { readonly readings?: readonly RampReading[]; readonly spread?: Spread; readonly steps?: readonly Step[] } = {},
): Replan =>
  replanRunSheet({
    steps: a.steps ?? DAY,
    done,
    nowMin,
    readings: a.readings ?? [],
    spread: a.spread ?? USUAL_SPREAD,
  });

export type Planned = Extract<Replan, { ok: true }>;

/** The plan; one that is none fails the test. */
export function planned(...args: Parameters<typeof replan>): Planned {
  const outcome = replan(...args);
  if (!outcome.ok) throw new Error(`no plan: ${outcome.reason} ${outcome.step}`);
  return outcome;
}

/** A step that is left; one that is not fails the test. */
export function left(plan: Planned, name: string): Planned["steps"][number] {
  const found = plan.steps.find((each) => each.id === name || each.name === name);
  if (found === undefined) throw new Error(`${name} is not left`);
  return found;
}
