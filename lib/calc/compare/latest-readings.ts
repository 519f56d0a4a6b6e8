import { requireInRange, type Range } from "../errors";
import { EXTRACT_RANGE } from "../gravity";
import { QUANTITIES } from "../ledger";
import { celsius, litres, minutes } from "../units";
import { MEASURABLE, MEASURABLE_QUANTITIES, type MeasurableQuantity } from "./measurable";

/** One measured number, in the ledger's unit. */
export interface ComparedReading {
  readonly quantity: MeasurableQuantity;
  readonly value: number;
  /** Standard uncertainty; 0 stands for what is typical of the instrument, for no reading is exact. */
  readonly sd: number;
}

export type Readings = ReadonlyMap<MeasurableQuantity, ComparedReading>;

/** Readings as plain numbers; a missing one was not taken. */
export type ReadValues = Readonly<Partial<Record<MeasurableQuantity, number>>>;

const RANGES: Readonly<Record<(typeof MEASURABLE)[MeasurableQuantity]["kind"], Range>> = {
  volume: litres.range,
  temperature: celsius.range,
  gravity: { unit: "°P", min: 0, max: 35 },
  duration: minutes.range,
};

/**
 * What a reading of a quantity can be; beer may be lighter than water, wort not.
 *
 * @returns Range in the ledger's unit.
 */
export const rangeOf = (quantity: MeasurableQuantity): Range =>
  quantity === "fermenter.finalExtract" ? EXTRACT_RANGE : RANGES[MEASURABLE[quantity].kind];

/**
 * Takes the last reading of each quantity in the order given: who measures again corrects what went before.
 *
 * @returns One reading for each quantity that was measured.
 * @throws {@link OutOfRangeError} when a value or an uncertainty is outside its range.
 */
export function latestReadings(readings: readonly ComparedReading[]): Readings {
  const latest = new Map<MeasurableQuantity, ComparedReading>();
  for (const { quantity, value, sd } of readings) {
    const { typicalSd } = MEASURABLE[quantity];
    const range = rangeOf(quantity);
    const { label } = QUANTITIES[quantity];
    requireInRange(label, value, range);
    requireInRange(`${label}, uncertainty`, sd, { unit: range.unit, min: 0, max: range.max });
    latest.set(quantity, { quantity, value, sd: sd === 0 ? typicalSd : sd });
  }
  return latest;
}

/**
 * Strips readings to their numbers.
 *
 * @returns The value of each quantity that was measured.
 */
export function readValues(readings: Readings): ReadValues {
  const values: Partial<Record<MeasurableQuantity, number>> = {};
  for (const quantity of MEASURABLE_QUANTITIES) {
    const reading = readings.get(quantity);
    if (reading !== undefined) values[quantity] = reading.value;
  }
  return values;
}
