import { rangeOf, readValues, type Readings, type ReadValues } from "./latest-readings";

export interface Measured {
  readonly value: number;
  /** Standard uncertainty. */
  readonly sd: number;
}

/**
 * Computes a value from readings, and how uncertain they leave it.
 *
 * Each reading moves by its uncertainty up and down; half the differences add up in squares. Where a moved reading has
 * no answer, the side that has one counts.
 *
 * @param of - The value as a function of the readings; null where they do not reach.
 * @returns Value and standard uncertainty, or null where the readings do not reach.
 * @source JCGM 100:2008, law of propagation of uncertainty (docs/sources.md#jcgm-100-2008)
 */
export function propagate(readings: Readings, of: (read: ReadValues) => number | null): Measured | null {
  const read = readValues(readings);
  const value = of(read);
  if (value === null) return null;
  let variance = 0;
  for (const { quantity, value: centre, sd } of readings.values()) {
    const up = of({ ...read, [quantity]: centre + sd }) ?? value;
    const down = of({ ...read, [quantity]: Math.max(rangeOf(quantity).min, centre - sd) }) ?? value;
    variance += ((up - down) / 2) ** 2;
  }
  return { value, sd: Math.sqrt(variance) };
}
