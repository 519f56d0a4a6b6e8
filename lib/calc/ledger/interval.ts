import { brew, brewWithWater } from "./brew";
import type { Ambient, Equipment } from "./equipment";
import { mashedMalt } from "./mashed-malt";
import { waterKg } from "./mass-balance";
import { QUANTITY_IDS, type QuantityId } from "./quantity-catalogue";
import type { Recipe } from "./recipe";
import { uncertainInputs } from "./uncertain-inputs";

/** An 80 % interval around a predicted value. */
export interface Interval {
  readonly low80: number;
  readonly high80: number;
}

export type Intervals = Readonly<Partial<Record<QuantityId, Interval>>>;

/** Half-width of the central 80 % of a normal distribution, in standard deviations. */
const Z80 = 1.2815515655446004;

/** What is weighed, poured or set is no prediction. */
const DECIDED: ReadonlySet<QuantityId> = new Set<QuantityId>([
  "water.total",
  "water.mash",
  "water.sparge",
  "water.topUp",
  "water.strike",
  "mash.grist",
  "mash.thickness",
  "kettle.boilingPoint",
  "fermenter.cells",
  "package.carbonation",
  "package.primingSugar",
  "package.pressure",
]);

/**
 * Gives 80 % intervals for every predicted number of a ledger.
 *
 * The water is measured out as planned; then each figure of the kettle and of the raw materials moves by its standard
 * uncertainty, up and down, and half the differences add up in squares. Numbers that share a figure move together, so
 * correlations between figures and results are carried; figures among themselves are taken as independent.
 *
 * @param a.recipe - Amounts for this kettle.
 * @param a.equipment - The kettle, with the uncertainty of each figure.
 * @param a.ambient - Air, tap water and grain on the day.
 * @returns An interval for each predicted quantity that has a value; empty when nothing can be brewed.
 * @validRange Figures whose effect is near linear over their uncertainty; tests hold it against sampling.
 * @throws {@link OutOfRangeError} when an input is outside its unit's range.
 * @source JCGM 100:2008, law of propagation of uncertainty (docs/sources.md#jcgm-100-2008)
 * @example
 * intervals({ recipe, equipment, ambient })["fermenter.originalExtract"]; // { low80: 11.6, high80: 12.5 }
 */
export function intervals(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}): Intervals {
  const centre = brew(a);
  if (!centre.ok) return {};
  const centreValues = centre.ledger.quantities;
  const water = {
    mashWaterKg: waterKg(centreValues["water.mash"] ?? 0),
    spargeKg: waterKg(centreValues["water.sparge"] ?? 0),
  };
  const variance = new Map<QuantityId, number>();
  const shiftSd = mashedMalt(centre.ledger.phases)?.shiftSd ?? 0;
  for (const input of uncertainInputs({ ...a, shiftSd })) {
    const up = brewWithWater({ ...a, ...water, ...input.up });
    const down = brewWithWater({ ...a, ...water, ...input.down });
    if (!up.ok || !down.ok) continue;
    for (const id of QUANTITY_IDS) {
      const high = up.ledger.quantities[id];
      const low = down.ledger.quantities[id];
      if (high === null || low === null) continue;
      const half = ((high - low) / 2) * input.scale;
      variance.set(id, (variance.get(id) ?? 0) + half * half);
    }
  }
  return collect(centreValues, variance);
}

function collect(
  centre: Readonly<Record<QuantityId, number | null>>,
  variance: ReadonlyMap<QuantityId, number>,
): Intervals {
  const found: Partial<Record<QuantityId, Interval>> = {};
  for (const id of QUANTITY_IDS) {
    const value = centre[id];
    const spread = variance.get(id) ?? 0;
    if (value === null || DECIDED.has(id) || spread <= 1e-18 * value * value) continue;
    const half = Z80 * Math.sqrt(spread);
    found[id] = { low80: value - half, high80: value + half };
  }
  return found;
}
