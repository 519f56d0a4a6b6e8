/** From here on the series is exact to the last bits. */
const FAR = 10;

/**
 * Gives what Stirling's formula leaves out of ln Γ: ln Γ(x) − (x − ½) ln x + x − ½ ln 2π.
 *
 * @param x - Argument, above 0.
 * @returns The remainder, falling to 1/(12 x).
 * @source Abramowitz and Stegun 1964, 6.1.15 and 6.1.41 (docs/sources.md#abramowitz-stegun-1964)
 */
export function stirlingError(x: number): number {
  if (x >= FAR) return series(x);
  // Γ(x) = Γ(x + 1) / x leads up to where the series holds.
  let shifted = x;
  let product = 1;
  while (shifted < FAR) product *= shifted++;
  const logGammaButRoot = (shifted - 0.5) * Math.log(shifted) - shifted + series(shifted) - Math.log(product);
  return logGammaButRoot - (x - 0.5) * Math.log(x) + x;
}

function series(x: number): number {
  const inverse = 1 / (x * x);
  const inner = 1 / 1680 - inverse * (1 / 1188 - inverse * (691 / 360360 - inverse / 156));
  return (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse * inner))) / x;
}
