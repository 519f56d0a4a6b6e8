import { requireInRange } from "../errors";
import { Z80 } from "../statistics";
import { brew, brewWithWater } from "./brew";
import type { Ambient, Equipment } from "./equipment";
import type { FigureCorrelation } from "./figure-correlation";
import type { Ledger, LedgerOutcome } from "./ledger";
import { waterKg } from "./mass-balance";
import { mashedMalt } from "./mashed-malt";
import { pouredWater, type UncertainWater, type Water } from "./poured-water";
import { QUANTITY_IDS, type QuantityId } from "./quantity-catalogue";
import type { Recipe } from "./recipe";
import { uncertainInputs, type UncertainInput } from "./uncertain-inputs";

/** An 80 % interval around a predicted value. */
export interface Interval {
  readonly low80: number;
  readonly high80: number;
}

export type Intervals = Readonly<Partial<Record<QuantityId, Interval>>>;

export const CORRELATION_RANGE = { unit: "", min: -1, max: 1 } as const;

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
 * Tells whether a number of the ledger is predicted, and so has an interval.
 *
 * @returns False for what is weighed, poured or set.
 */
export const isPredicted = (id: QuantityId): boolean => !DECIDED.has(id);

/**
 * Gives 80 % intervals for every predicted number of a ledger.
 *
 * The water is measured out as planned, as well as it can be poured; then it, each figure of the kettle and of the raw materials
 * moves by its standard uncertainty, up and down, and half the differences add up by the law of propagation. Numbers that share a figure move
 * together, so correlations between results are carried; figures that were learned together are off together where
 * `correlations` says so, and independent where it does not.
 *
 * @param a.recipe - Amounts for this kettle.
 * @param a.equipment - The kettle, with the uncertainty of each figure.
 * @param a.ambient - Air, tap water and grain on the day.
 * @param a.correlations - Pairs of figures whose errors go together; left out, those that stand in the equipment.
 * @returns An interval for each predicted quantity that has a value; empty when nothing can be brewed.
 * @validRange Figures whose effect is near linear over their uncertainty; tests hold it against `sampledIntervals`.
 * @throws {@link OutOfRangeError} when an input is outside its unit's range or a coefficient outside −1 to 1.
 * @source JCGM 100:2008, law of propagation of uncertainty (docs/sources.md#jcgm-100-2008)
 * @example
 * intervals({ recipe, equipment, ambient })["fermenter.originalExtract"]; // { low80: 11.6, high80: 12.5 }
 */
export function intervals(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly correlations?: readonly FigureCorrelation[];
}): Intervals {
  const correlations = a.correlations ?? a.equipment.correlations ?? [];
  for (const { coefficient } of correlations) {
    requireInRange("correlation coefficient", coefficient, CORRELATION_RANGE);
  }
  const centre = brew(a);
  if (!centre.ok) return {};
  return intervalsFrom(effectsOf(a, centre.ledger), centre.ledger, correlations);
}

/**
 * Adds the effects of all that is not exactly known up to intervals.
 *
 * @returns An interval for each predicted quantity that has a value.
 */
export function intervalsFrom(
  effects: readonly Effect[],
  centre: Ledger,
  correlations: readonly FigureCorrelation[],
): Intervals {
  const found: Partial<Record<QuantityId, Interval>> = {};
  for (const id of QUANTITY_IDS) {
    const value = centre.quantities[id];
    if (value === null || !isPredicted(id)) continue;
    const variance = varianceOf(effects, id, correlations);
    if (variance <= 1e-18 * value * value) continue;
    const half = Z80 * Math.sqrt(variance);
    found[id] = { low80: value - half, high80: value + half };
  }
  return found;
}

type EffectName = UncertainInput["name"] | UncertainWater["name"];

/** What one standard uncertainty of one input does to the numbers of the ledger. */
export interface Effect {
  readonly name: EffectName;
  readonly change: Readonly<Partial<Record<QuantityId, number>>>;
}

/**
 * Moves everything that is not exactly known by one standard uncertainty, one after the other.
 *
 * @returns What each of them does to the numbers of the ledger.
 */
export function effectsOf(a: Parameters<typeof intervals>[0], centre: Ledger): Effect[] {
  const water = waterOf(centre);
  const shiftSd = mashedMalt(centre.phases)?.shiftSd ?? 0;
  const inputs = uncertainInputs({ ...a, shiftSd }).map(({ name, move, reach }): Effect => {
    const up = brewWithWater({ ...a, ...water, ...move(a, 1) });
    const down = brewWithWater({ ...a, ...water, ...move(a, -1) });
    return { name, change: changeBetween(centre, { up, down, reach }) };
  });
  const waters = pouredWater(water).map(({ name, move }): Effect => {
    const up = brewWithWater({ ...a, ...move(water, 1) });
    const down = brewWithWater({ ...a, ...move(water, -1) });
    return { name, change: changeBetween(centre, { up, down, reach: { up: 1, down: 1 } }) };
  });
  return [...inputs, ...waters];
}

function changeBetween(
  centre: Ledger,
  {
    up,
    down,
    reach,
  }: { readonly up: LedgerOutcome; readonly down: LedgerOutcome; readonly reach: UncertainInput["reach"] },
): Effect["change"] {
  // Where one side cannot be brewed any more, the other tells how steep the middle is.
  const high = up.ok ? up.ledger : centre;
  const low = down.ok ? down.ledger : centre;
  const span = (up.ok ? reach.up : 0) + (down.ok ? reach.down : 0);
  const change: Partial<Record<QuantityId, number>> = {};
  for (const id of QUANTITY_IDS) {
    const most = high.quantities[id];
    const least = low.quantities[id];
    if (most !== null && least !== null && span > 0) change[id] = (most - least) / span;
  }
  return change;
}

/**
 * Measures out the water that a plan asks for.
 *
 * @returns Mash and sparge water, kg.
 */
export function waterOf({ quantities }: Ledger): Water {
  return {
    mashWaterKg: waterKg(quantities["water.mash"] ?? 0),
    spargeKg: waterKg(quantities["water.sparge"] ?? 0),
  };
}

function varianceOf(effects: readonly Effect[], id: QuantityId, correlations: readonly FigureCorrelation[]): number {
  const changeBy = (name: EffectName): number => effects.find((effect) => effect.name === name)?.change[id] ?? 0;
  let variance = effects.reduce((sum, { change }) => sum + (change[id] ?? 0) ** 2, 0);
  for (const { one, other, coefficient } of correlations) {
    variance += 2 * coefficient * changeBy(one) * changeBy(other);
  }
  // Coefficients that contradict each other, or rounding, must not make less than nothing of it.
  return Math.max(0, variance);
}
