import type { Step, StepName } from "@/lib/calc/runsheet";
import type { Brew } from "./brew";

const MINUTE_MS = 60_000;

/** The stretches of a brew day whose times are worth comparing, in their order. */
const STRETCHES = [
  { id: "strike", label: "Heating the strike water", steps: ["heat strike water"] },
  { id: "mash", label: "Mash", steps: ["dough in", "rest", "heat between rests"] },
  { id: "runOff", label: "Run-off", steps: ["lift and drain", "sparge"] },
  { id: "heat", label: "Heating to the boil", steps: ["heat to the boil"] },
  { id: "boil", label: "Boil", steps: ["boil"] },
  { id: "stand", label: "Cooling and stand", steps: ["cool to the stand", "stand"] },
  { id: "chill", label: "Chill", steps: ["chill"] },
] as const satisfies readonly { readonly id: string; readonly label: string; readonly steps: readonly StepName[] }[];

/** One stretch, planned and as its steps were confirmed; minutes from the start of the day. */
export interface StretchTime {
  readonly id: (typeof STRETCHES)[number]["id"];
  readonly label: string;
  readonly plannedStart: number;
  readonly plannedMinutes: number;
  /** null where its beginning was not confirmed. */
  readonly start: number | null;
  /** null where its end was not confirmed. */
  readonly minutes: number | null;
}

/** When the stretches of a brew day were planned, and when they were; only what the sheet has. */
export function brewTimes({ runSheet, log }: Pick<Brew, "runSheet" | "log">): readonly StretchTime[] {
  const dayBegan = Math.min(...runSheet.flatMap(({ id }) => log.steps.get(id)?.begunAt ?? []));
  return STRETCHES.flatMap(({ id, label, steps }): StretchTime[] => {
    const own = runSheet.filter(({ name }) => steps.some((each) => each === name));
    if (own.length === 0) return [];
    const plannedStart = Math.min(...own.map(({ startMin }) => startMin));
    const plannedEnd = Math.max(...own.map(({ startMin, minutes }) => startMin + minutes));
    const began = firstOf(own, log);
    const ended = lastOf(own, log);
    return [
      {
        id,
        label,
        plannedStart,
        plannedMinutes: plannedEnd - plannedStart,
        start: began === null ? null : (began - dayBegan) / MINUTE_MS,
        minutes: began === null || ended === null ? null : (ended - began) / MINUTE_MS,
      },
    ];
  });
}

function firstOf(steps: readonly Step[], log: Brew["log"]): number | null {
  const [first] = steps;
  return first === undefined ? null : (log.steps.get(first.id)?.begunAt ?? null);
}

/** Over when its last step is, even where somebody forgot one in between; a step left out ends nothing. */
function lastOf(steps: readonly Step[], log: Brew["log"]): number | null {
  const last = steps.at(-1);
  return last === undefined ? null : (log.steps.get(last.id)?.doneAt ?? null);
}
