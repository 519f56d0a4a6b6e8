import { OutOfRangeError } from "@/lib/calc/errors";
import {
  brew as brewLedger,
  QUANTITY_IDS,
  type Interval,
  type Intervals,
  type KettleDipStick,
  type Ledger,
} from "@/lib/calc/ledger";
import type { Brew } from "./brew";

/** What was planned for a batch, as a whole ledger. */
export interface BrewPlan {
  readonly ledger: Ledger;
  readonly intervals: Intervals;
  /** With what volumes in this kettle are read; null where nobody has measured a stick. */
  readonly dipStick: KettleDipStick | null;
}

/**
 * The plan of a batch. What was predicted when it was planned is kept to the digit; the rest of the ledger follows from
 * the same recipe and kettle. null when today's arithmetic refuses what an older one took.
 */
export function planOf({ recipe, equipment, ambient, predicted }: PlannedBrew): BrewPlan | null {
  const computed = ledgerOf({ recipe, equipment, ambient });
  if (computed === null) return null;
  const quantities = { ...computed.quantities };
  const intervals: Partial<Record<(typeof QUANTITY_IDS)[number], Interval>> = {};
  for (const id of QUANTITY_IDS) {
    const prediction = predicted[id];
    if (prediction === undefined) continue;
    quantities[id] = prediction.value;
    intervals[id] = { low80: prediction.low80, high80: prediction.high80 };
  }
  return { ledger: { ...computed, quantities }, intervals, dipStick: equipment.kettle.dipStick ?? null };
}

export type PlannedBrew = Pick<Brew, "recipe" | "equipment" | "ambient" | "predicted">;

function ledgerOf(day: Pick<Brew, "recipe" | "equipment" | "ambient">): Ledger | null {
  try {
    const outcome = brewLedger(day);
    return outcome.ok ? outcome.ledger : null;
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
