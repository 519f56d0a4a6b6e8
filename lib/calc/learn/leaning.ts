import type { MeasurableQuantity } from "../compare";
import type { Readings } from "../compare/latest-readings";
import { FIGURES, type Ambient, type Equipment, type FigureName, type Ledger, type Recipe } from "../ledger";
import { isPredicted, type Effect } from "../ledger/interval";

/** What was brewed, on what, on which day. */
export interface BrewedWith {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}

/** One reading and what it leans on. */
export interface Leaning {
  readonly quantity: MeasurableQuantity;
  /** Reading less ledger. */
  readonly residual: number;
  /** Standard uncertainty of the instrument. */
  readonly sd: number;
  /** Change with each figure, per unit of the figure. */
  readonly figures: ReadonlyMap<FigureName, number>;
  /** Change with one standard deviation of each thing that is fresh with every brew. */
  readonly fresh: readonly number[];
}

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
  },
): Leaning[] {
  const { equipment, ledger, effects } = a;
  const names = new Set<string>(FIGURES.map(({ name }) => name));
  const figures = FIGURES.flatMap(({ name, of }) => {
    const effect = effects.find((each) => each.name === name);
    return effect === undefined ? [] : [{ name, sd: of(equipment).sd, change: effect.change }];
  });
  const fresh = effects.filter(({ name }) => !names.has(name)).map(({ change }) => change);
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

/**
 * Covariance of the readings from their instruments and from all that is fresh with each brew.
 *
 * @returns The matrix, row after row.
 */
export function instrumentCovariance(rows: readonly Leaning[]): Float64Array {
  const size = rows.length;
  const matrix = new Float64Array(size * size);
  rows.forEach((one, i) => {
    rows.forEach((other, j) => {
      let sum = i === j ? one.sd ** 2 : 0;
      for (let k = 0; k < one.fresh.length; k++) sum += (one.fresh[k] ?? 0) * (other.fresh[k] ?? 0);
      matrix[i * size + j] = sum;
    });
  });
  return matrix;
}
