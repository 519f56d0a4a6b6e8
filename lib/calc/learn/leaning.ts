import { MEASURABLE } from "../compare";
import type { Readings } from "../compare/latest-readings";
import {
  brewWithWater,
  FIGURES,
  type Ambient,
  type Equipment,
  type FigureName,
  type Ledger,
  type QuantityId,
  type Recipe,
} from "../ledger";
import { isPredicted, type Effect, type waterOf } from "../ledger/interval";
import { waterKg, waterL } from "../ledger/mass-balance";

/** What was brewed, on what, on which day. */
export interface BrewedWith {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}

/** One reading and what it leans on. */
export interface Leaning {
  readonly quantity: QuantityId;
  /** Reading less ledger. */
  readonly residual: number;
  /** Standard uncertainty of the instrument. */
  readonly sd: number;
  /** Change with each figure, per unit of the figure. */
  readonly figures: ReadonlyMap<FigureName, number>;
  /** Change with one standard deviation of each thing that is fresh with every brew. */
  readonly fresh: readonly number[];
}

/** Poured as well as a stick tells, or to 1 % of a large volume, as reconciliation takes it. */
const pouredSd = (litres: number): number =>
  litres > 0 ? Math.max(MEASURABLE["water.mash"].typicalSd, 0.01 * litres) : 0;

/**
 * Sets each reading beside the ledger, with what moves it there.
 *
 * @returns Readings that the ledger predicts, and the mash water, which it is told.
 */
export function leaning(
  a: BrewedWith & {
    readonly ledger: Ledger;
    readonly effects: readonly Effect[];
    readonly readings: Readings;
    readonly water: ReturnType<typeof waterOf>;
  },
): Leaning[] {
  const { equipment, ledger, effects } = a;
  const names = new Set<string>(FIGURES.map(({ name }) => name));
  const figures = FIGURES.flatMap(({ name, of }) => {
    const effect = effects.find((each) => each.name === name);
    return effect === undefined ? [] : [{ name, sd: of(equipment).sd, change: effect.change }];
  });
  const fresh = [...effects.filter(({ name }) => !names.has(name)).map(({ change }) => change), ...pouring(a)];
  return [...a.readings.values()].flatMap(({ quantity, value, sd }): Leaning[] => {
    const expected = ledger.quantities[quantity];
    if (expected === null || !(isPredicted(quantity) || quantity === "water.mash")) return [];
    return [
      {
        quantity,
        residual: value - expected,
        sd,
        figures: new Map(figures.map((each) => [each.name, (each.change[quantity] ?? 0) / each.sd])),
        fresh: fresh.map((change) => change[quantity] ?? 0),
      },
    ];
  });
}

/** What one standard deviation more of mash and of sparge water does. */
function pouring(a: Parameters<typeof leaning>[0]): Effect["change"][] {
  const { ledger, water, readings } = a;
  const more = (of: "mashWaterKg" | "spargeKg"): Effect["change"][] => {
    const sd = pouredSd(waterL(water[of]));
    const poured = brewWithWater({ ...a, ...water, [of]: water[of] + waterKg(sd) });
    if (sd === 0 || !poured.ok) return [];
    const change: Partial<Record<QuantityId, number>> = {};
    for (const quantity of readings.keys()) {
      const before = ledger.quantities[quantity];
      const after = poured.ledger.quantities[quantity];
      if (before !== null && after !== null) change[quantity] = after - before;
    }
    return [change];
  };
  return [...more("mashWaterKg"), ...more("spargeKg")];
}
