// Stop a series when a term no longer changes the sum.
const RELATIVE = 1e-16;
const MOST_TERMS = 10_000;

/**
 * Gives the regularised upper incomplete gamma function Q(n/2, x) for a whole number n.
 *
 * Left of the bend the power series of its complement is summed, right of it the continued fraction; each converges
 * fast on its own side.
 *
 * @param halves - n, twice the shape; at least 1.
 * @param x - Lower end of the integral, at least 0.
 * @returns Q from 1 at x = 0 down to 0.
 * @source Abramowitz and Stegun 1964, 6.5.29 and 6.5.31 (docs/sources.md#abramowitz-stegun-1964)
 */
export function upperIncompleteGamma(halves: number, x: number): number {
  if (x === 0) return 1;
  const shape = halves / 2;
  // x^a e^(−x) / Γ(a), in logarithms because each factor alone may overflow.
  const front = Math.exp(shape * Math.log(x) - x - logGammaOfHalves(halves));
  return x < shape + 1 ? 1 - front * series(shape, x) : front * continuedFraction(shape, x);
}

// γ(a, x) e^x / x^a = Σ xⁿ / (a (a+1) … (a+n)).
function series(shape: number, x: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; n < MOST_TERMS && term > RELATIVE * sum; n++) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

// Γ(a, x) e^x / x^a = 1/(x+1−a− 1(1−a)/(x+3−a− …)), evaluated from the front by Lentz's method.
function continuedFraction(shape: number, x: number): number {
  let b = x + 1 - shape;
  let c = Infinity;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < MOST_TERMS; n++) {
    const a = n * (shape - n);
    b += 2;
    d = 1 / (b + a * d);
    c = b + a / c;
    value *= c * d;
    if (Math.abs(c * d - 1) < RELATIVE) break;
  }
  return value;
}

// ln Γ(n/2) by Γ(a + 1) = a Γ(a), from Γ(1/2) = √π or Γ(1) = 1.
function logGammaOfHalves(halves: number): number {
  const odd = halves % 2 === 1;
  let sum = odd ? Math.log(Math.PI) / 2 : 0;
  for (let a = odd ? 0.5 : 1; a < halves / 2; a++) sum += Math.log(a);
  return sum;
}
