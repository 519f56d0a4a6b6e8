import { OutOfRangeError, requireInRange } from "../errors";

const FINITE = { unit: "", min: -1e300, max: 1e300 } as const;

/**
 * Reads a table between its rows along straight lines.
 *
 * @param a.quantity - What `x` is, for the message of a refusal.
 * @param a.unit - Unit of `x`, for the same.
 * @param a.rows - Pairs of x and y, at least one, by rising x.
 * @param a.x - Where to read.
 * @returns The value at `x`.
 * @validRange From the first to the last row; a table is not continued past its ends.
 * @throws {@link OutOfRangeError} when `x` is outside the table, or a row on the way to it is out of order or not a number.
 * @source Abramowitz and Stegun 1964, 25.2 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * interpolateLinear({ quantity: "moisture", unit: "%", rows: [[0, 3], [2, 2]], x: 1 }); // 2.5
 */
export function interpolateLinear({
  quantity,
  unit,
  rows,
  x,
}: {
  readonly quantity: string;
  readonly unit: string;
  readonly rows: readonly (readonly [x: number, y: number])[];
  readonly x: number;
}): number {
  requireInRange("number of rows", rows.length, { unit: "", min: 1, max: FINITE.max });
  requireInRange(quantity, x, { unit, min: rows[0]?.[0] ?? x, max: rows.at(-1)?.[0] ?? x });
  let [xBefore, yBefore] = rows[0] ?? [x, x];
  for (const row of rows) {
    const xHere = row[0];
    const yHere = row[1];
    // The words of a refusal are made only for one: this is the innermost loop of a brew.
    if (!(xHere >= xBefore && xHere <= FINITE.max)) {
      throw new OutOfRangeError(`${quantity} of a row`, xHere, { unit, min: xBefore, max: FINITE.max });
    }
    requireInRange("value of a row", yHere, FINITE);
    if (xHere >= x)
      return xHere === xBefore ? yHere : yBefore + ((yHere - yBefore) * (x - xBefore)) / (xHere - xBefore);
    xBefore = xHere;
    yBefore = yHere;
  }
  return yBefore;
}
