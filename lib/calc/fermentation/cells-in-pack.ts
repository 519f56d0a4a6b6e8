import { requireInRange } from "../errors";
import { billionCells, type BillionCells, type Celsius, type Days } from "../units";

/** How yeast is sold. */
export type YeastForm = "dry" | "liquid";

/** A count of cells and between what limits the rates of practice leave it. */
export interface CountedCells {
  readonly expected: BillionCells;
  readonly low: BillionCells;
  readonly high: BillionCells;
}

export const PACK_RANGE = {
  days: { unit: "d", min: 0, max: 1500 },
  celsius: {
    dry: { unit: "°C", min: 0, max: 25 },
    liquid: { unit: "°C", min: 0, max: 8 },
  },
} as const;

/** Share of the living cells that is lost, in so many days. */
interface Loss {
  readonly expected: number;
  readonly least: number;
  readonly most: number;
  readonly inDays: number;
  /** Kelvin that double the rate; null where the range is too narrow to tell. */
  readonly doubledByK: number | null;
}

const FRIDGE_C = 4;

const LOSSES: Readonly<Record<YeastForm, Loss>> = {
  liquid: { expected: 0.225, least: 0.2, most: 0.25, inDays: 30, doubledByK: null },
  dry: { expected: 0.04, least: 0.02, most: 0.06, inDays: 365, doubledByK: 8 },
};

/**
 * Estimates the living cells of a pack of yeast from its age.
 *
 * They die off exponentially: liquid yeast 20 to 25 % a month in a fridge, dry yeast 2 to 6 % a year, twice as fast for
 * each 8 K warmer. Liquid yeast that stood warm has no rate; it wants a count or a starter.
 *
 * @param a.cells - Living cells when packed, 10⁹.
 * @param a.ageDays - Age of the pack, days.
 * @param a.form - Dry or liquid.
 * @param a.celsius - Storage temperature, °C.
 * @returns Living cells, 10⁹, with the limits of the rates.
 * @validRange Up to 1500 days; dry yeast at 0 to 25 °C, liquid at 0 to 8 °C.
 * @throws {@link OutOfRangeError} when cells, age or temperature are outside their range.
 * @source Common practice (docs/sources.md#trade-practice)
 * @example
 * cellsInPack({ cells: billionCells(100), ageDays: days(30), form: "liquid", celsius: celsius(4) });
 * // { expected: 77.5, low: 75, high: 80 }
 */
export function cellsInPack({
  cells,
  ageDays,
  form,
  celsius,
}: {
  readonly cells: BillionCells;
  readonly ageDays: Days;
  readonly form: YeastForm;
  readonly celsius: Celsius;
}): CountedCells {
  requireInRange("cells", cells, billionCells.range);
  requireInRange("age", ageDays, PACK_RANGE.days);
  requireInRange("storage temperature", celsius, PACK_RANGE.celsius[form]);
  const { expected, least, most, inDays, doubledByK } = LOSSES[form];
  const faster = doubledByK === null ? 1 : 2 ** ((celsius - FRIDGE_C) / doubledByK);
  const left = (loss: number): BillionCells => billionCells(cells * (1 - loss) ** ((faster * ageDays) / inDays));
  return { expected: left(expected), low: left(most), high: left(least) };
}
