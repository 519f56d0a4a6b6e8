import { requireInRange } from "../errors";
import { minutes } from "../units";
import type { StepRecord } from "./replan";
import type { Step } from "./step";

/** What is known of a step: nothing, that it was left out, or when it began and perhaps ended. */
export type Known =
  { readonly kind: "left out" } | { readonly kind: "begun"; readonly startMin: number; readonly endMin: number | null };

export type Records = ReadonlyMap<string, Known>;

/**
 * Puts the records of a day in order; of several for one step the last one counts.
 *
 * @returns What is known of each step; or the step that is not on the sheet.
 * @throws {@link OutOfRangeError} when a time lies ahead, before the day, or an end before its start.
 */
export function recordsOf(
  sheet: readonly Step[],
  done: readonly StepRecord[],
  nowMin: number,
): Records | { readonly unknown: string } {
  requireInRange("now", nowMin, minutes.range);
  const ids = new Set(sheet.map(({ id }) => id));
  const records = new Map<string, Known>();
  for (const { step, startMin, endMin } of done) {
    if (!ids.has(step)) return { unknown: step };
    if (startMin === null) {
      records.set(step, { kind: "left out" });
      continue;
    }
    requireInRange(`start of ${step}`, startMin, { unit: "min", min: 0, max: nowMin });
    if (endMin !== null) requireInRange(`end of ${step}`, endMin, { unit: "min", min: startMin, max: nowMin });
    records.set(step, { kind: "begun", startMin, endMin });
  }
  return records;
}
