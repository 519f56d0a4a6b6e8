const SPLIT = 2 ** 27 + 1;

/**
 * Adds products to a start value as if with twice the digits.
 *
 * Each product is split into its rounded value and what rounding lost, and so is each sum.
 *
 * @param start - Value to which the products are added.
 * @param a - First factors; as many as of `b` are used.
 * @param b - Second factors.
 * @param sign - 1 to add, −1 to take off.
 * @returns start + sign Σ a b.
 * @source Ogita, Rump and Oishi 2005, Dot2, after Dekker 1971 (docs/sources.md#ogita-2005)
 */
export function exactDot(start: number, a: ArrayLike<number>, b: ArrayLike<number>, sign: 1 | -1): number {
  let sum = start;
  let lost = 0;
  for (let i = 0; i < b.length; i++) {
    const x = sign * (a[i] ?? 0);
    const y = b[i] ?? 0;
    const product = x * y;
    const xHigh = high(x);
    const yHigh = high(y);
    const xLow = x - xHigh;
    const yLow = y - yHigh;
    const productLost = xLow * yLow - (product - xHigh * yHigh - xLow * yHigh - xHigh * yLow);
    const next = sum + product;
    const part = next - sum;
    lost += sum - (next - part) + (product - part) + productLost;
    sum = next;
  }
  return sum + lost;
}

// The upper half of the digits.
function high(x: number): number {
  const spread = SPLIT * x;
  return spread - (spread - x);
}
