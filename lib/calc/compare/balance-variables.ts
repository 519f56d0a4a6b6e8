import type { Intervals, Ledger, QuantityId } from "../ledger";
import { Z80 } from "../statistics";
import { MEASURABLE, type MeasurableQuantity } from "./measurable";
import type { PlannedBrew } from "./planned-brew";
import type { Readings } from "./latest-readings";

/** Readings that the balances of water and extract tie to each other. */
export const BALANCED_READINGS = [
  "water.mash",
  "mash.firstWort",
  "kettle.preBoil",
  "kettle.preBoilGravity",
  "kettle.postBoil",
  "fermenter.originalExtract",
  "fermenter.volume",
  "package.volume",
] as const satisfies readonly MeasurableQuantity[];

/** Figures of the plan that they lean on, each with the uncertainty of the prediction. */
export const PLAN_FIGURES = [
  "spargeL",
  "dissolvedKg",
  "lauterLostKg",
  "retainedKg",
  "evaporatedKg",
  "leftKg",
  "beerLeftL",
] as const satisfies readonly (keyof PlannedBrew)[];

export type BalancedReading = (typeof BALANCED_READINGS)[number];
export type VariableId = BalancedReading | (typeof PLAN_FIGURES)[number];

export interface Variable {
  readonly id: VariableId;
  readonly value: number;
  readonly planned: number;
  /** null where it is neither measured nor known from the plan. */
  readonly sigma: number | null;
  /** The reading behind it; null where the plan stands in for one. */
  readonly reading: BalancedReading | null;
}

/** What is nought by definition, such as the loss of a mash without grain. */
const EXACT = 1e-6;

/** A spread of next to nothing, such as that of hops that hold no wort, is none. */
const floored = (sd: number | null): number | null => (sd === null ? null : Math.max(EXACT, sd));

/** Water that was not measured again was poured as well as such a volume can be: as a stick, or 1 % of a large one. */
const pouredSd = (litres: number): number => (litres > 0 ? Math.max(stickSd, 0.01 * litres) : EXACT);

const stickSd = MEASURABLE["water.mash"].typicalSd;

/**
 * Lists what the balances are about: the readings, and the figures of the plan that lie between them.
 *
 * Uncertainties of the plan come from its intervals and are taken as independent of each other.
 *
 * @returns Readings first, then figures of the plan.
 */
export function balanceVariables(a: {
  readonly ledger: Ledger;
  readonly intervals: Intervals;
  readonly plan: PlannedBrew;
  readonly readings: Readings;
}): Variable[] {
  const { ledger, plan, readings } = a;
  const measured = BALANCED_READINGS.map((id): Variable => {
    const reading = readings.get(id);
    const planned = ledger.quantities[id] ?? 0;
    if (reading !== undefined) return { id, value: reading.value, planned, sigma: reading.sd, reading: id };
    const sigma = id === "water.mash" ? pouredSd(plan.mashWaterL) : null;
    return { id, value: planned, planned, sigma, reading: null };
  });
  const spreads = planSpreads(a);
  const planned = PLAN_FIGURES.map((id): Variable => {
    const value = plan[id];
    return { id, value, planned: value, sigma: value === 0 ? EXACT : floored(spreads[id]), reading: null };
  });
  return [...measured, ...planned];
}

function planSpreads(a: {
  readonly ledger: Ledger;
  readonly intervals: Intervals;
  readonly plan: PlannedBrew;
}): Readonly<Record<(typeof PLAN_FIGURES)[number], number | null>> {
  const { ledger, intervals, plan } = a;
  const sdOf = (id: QuantityId): number | null => {
    const interval = intervals[id];
    return interval === undefined ? null : (interval.high80 - interval.low80) / (2 * Z80);
  };
  /** The ledger gives the volume, the balance needs the mass. */
  const asMass = (id: QuantityId, kg: number): number | null => {
    const sd = sdOf(id);
    const litres = ledger.quantities[id];
    return sd === null || litres === null || litres === 0 ? null : (sd * kg) / litres;
  };
  const packaged = sdOf("package.volume");
  const wort = sdOf("fermenter.volume") ?? 0;
  return {
    spargeL: pouredSd(plan.spargeL),
    dissolvedKg: sdOf("mash.dissolved"),
    lauterLostKg: sdOf("lauter.lost"),
    retainedKg: asMass("lauter.retained", plan.retainedKg),
    evaporatedKg: asMass("kettle.evaporated", plan.evaporatedKg),
    leftKg: asMass("stand.lost", plan.leftKg),
    // What the spread of the packaged volume has beyond that of the wort, and no less than a reading's.
    beerLeftL:
      packaged === null ? null : Math.sqrt(Math.max(stickSd ** 2, packaged ** 2 - (plan.beerPerWort * wort) ** 2)),
  };
}
