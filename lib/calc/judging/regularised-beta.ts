// The continued fraction ends when a factor no longer changes the value.
const RELATIVE = 1e-16;
const MOST_TERMS = 10_000;

/** Above this the series of Stirling is exact to the last bits. */
const FAR = 10;

/**
 * Gives the regularised incomplete beta function, on which the tails of the binomial, of F and of Student's t rest.
 *
 * The continued fraction converges fast left of the bend; right of it its mirror image is taken.
 *
 * @param x - Upper end of the integral, 0 to 1.
 * @param a - First shape, above 0.
 * @param b - Second shape, above 0.
 * @returns I from 0 at x = 0 to 1 at x = 1, within 1e-10.
 * @source Abramowitz and Stegun 1964, 26.5.8 and 6.1.41 (docs/sources.md#abramowitz-stegun-1964)
 */
export function regularisedBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // x^a (1 − x)^b / B(a, b), in logarithms because each factor alone may overflow.
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  if (x < (a + 1) / (a + b + 2)) return (front * continuedFraction(x, a, b)) / a;
  return 1 - (front * continuedFraction(1 - x, b, a)) / b;
}

// 1/(1+ d₁/(1+ d₂/(1+ …))), evaluated from the front by Lentz's method; two terms in each turn.
function continuedFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m < MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    value *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    value *= c * d;
    if (Math.abs(c * d - 1) < RELATIVE) break;
  }
  return value;
}

// Stirling's series, reached from below by Γ(x) = Γ(x + 1) / x.
function logGamma(x: number): number {
  let shifted = x;
  let product = 1;
  while (shifted < FAR) product *= shifted++;
  const inverse = 1 / (shifted * shifted);
  const series =
    (1 / 12 -
      inverse *
        (1 / 360 - inverse * (1 / 1260 - inverse * (1 / 1680 - inverse * (1 / 1188 - (inverse * 691) / 360360))))) /
    shifted;
  return (shifted - 0.5) * Math.log(shifted) - shifted + Math.log(2 * Math.PI) / 2 + series - Math.log(product);
}
