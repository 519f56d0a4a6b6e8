import type { Step } from "@/lib/calc/runsheet";
import type { LoggedStep } from "@/lib/model/log/step-log";

/** The sheet with the steps that the brewer put in, each behind the one that it was put behind. */
export function sheetWithAdded(sheet: readonly Step[], log: ReadonlyMap<string, LoggedStep>): readonly Step[] {
  const steps = [...sheet];
  for (const { step: id, added } of log.values()) {
    if (added === null || steps.some((step) => step.id === id)) continue;
    const at = added.after === null ? -1 : steps.findIndex((step) => step.id === added.after);
    // Behind one that is not on this sheet: at the end, where it is seen.
    const place = added.after !== null && at === -1 ? steps.length : at + 1;
    const before = steps[place - 1];
    steps.splice(place, 0, extraStep(id, added.minutes, before));
  }
  return steps;
}

function extraStep(id: string, minutes: number, before: Step | undefined): Step {
  const startMin = before === undefined ? 0 : before.startMin + before.minutes;
  const figures = { celsius: null, litres: null, powerW: null };
  return { id, name: "extra", startMin, minutes, ...figures, amounts: [], measure: [], cautions: [] };
}
