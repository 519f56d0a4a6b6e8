import { requireInRange } from "../errors";

/**
 * Reads a table between its rows along straight lines.
 *
 * @param a.quantity - What `x` is, for the message of a refusal.
 * @param a.unit - Unit of `x`, for the same.
 * @param a.rows - Pairs of x and y, at least one, by rising x.
 * @param a.x - Where to read.
 * @returns The value at `x`.
 * @validRange From the first to the last row; a table is not continued past its ends.
 * @throws {@link OutOfRangeError} when `x` is outside the table.
 * @source Definition
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
  requireInRange(quantity, x, { unit, min: rows[0]?.[0] ?? NaN, max: rows.at(-1)?.[0] ?? NaN });
  let [xBefore, yBefore] = rows[0] ?? [x, NaN];
  for (const [xHere, yHere] of rows) {
    if (xHere >= x)
      return xHere === xBefore ? yHere : yBefore + ((yHere - yBefore) * (x - xBefore)) / (xHere - xBefore);
    [xBefore, yBefore] = [xHere, yHere];
  }
  return yBefore;
}
