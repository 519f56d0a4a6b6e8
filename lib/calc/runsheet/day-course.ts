import type { Step, StepName } from "./step";

/** A step that goes along with a step of the course: an addition, or the watch over the foam. */
export interface Companion {
  readonly step: Step;
  /** Place of the boil or the stand in the course. */
  readonly of: number;
}

/** The day as one step after the other, and what goes along with them. */
export interface Course {
  readonly steps: readonly Step[];
  readonly companions: readonly Companion[];
}

const COMPANIONS: ReadonlySet<StepName> = new Set<StepName>(["hop addition", "hot-break watch"]);
const HOPPED: ReadonlySet<StepName> = new Set<StepName>(["boil", "stand"]);

/**
 * Tells the steps that follow each other from those that go along with a boil or a stand.
 *
 * @param sheet - Steps in order of time; an addition stands behind the boil or the stand that it belongs to.
 * @returns The course; a companion without a boil or a stand is a step of it.
 */
export function courseOf(sheet: readonly Step[]): Course {
  const steps: Step[] = [];
  const companions: Companion[] = [];
  for (const step of sheet) {
    if (!COMPANIONS.has(step.name)) {
      steps.push(step);
      continue;
    }
    // The watch begins before the boil does, so the boil is yet to come.
    const of = step.name === "hot-break watch" ? steps.length : steps.findLastIndex(({ name }) => HOPPED.has(name));
    if (of === -1) steps.push(step);
    else companions.push({ step, of });
  }
  return { steps, companions: companions.filter(({ of }) => of < steps.length) };
}
