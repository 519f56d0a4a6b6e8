import { stirlingError } from "./stirling-error";

// The continued fraction ends when a factor no longer changes the value.
const RELATIVE = 1e-16;
const MOST_TERMS = 20_000;

/**
 * Gives the regularised incomplete beta function from x and its complement, so that neither loses digits near an end.
 *
 * The continued fraction converges fast left of the bend; right of it its mirror image is taken.
 *
 * @param at.x - Upper end of the integral.
 * @param at.rest - 1 − x.
 * @returns I from 0 at x = 0 to 1 at x = 1.
 * @source Abramowitz and Stegun 1964, 26.5.8 (docs/sources.md#abramowitz-stegun-1964)
 */
export function betaTail(at: {
  readonly x: number;
  readonly rest: number;
  readonly a: number;
  readonly b: number;
}): number {
  const { x, rest, a, b } = at;
  if (x <= 0) return 0;
  if (rest <= 0) return 1;
  const front = densityFront(x, rest, a, b);
  const lower = x < (a + 1) / (a + b + 2);
  const part = lower ? (front * continuedFraction(x, a, b)) / a : (front * continuedFraction(rest, b, a)) / b;
  const tail = Math.min(1, part);
  return lower ? tail : 1 - tail;
}

// x^a (1 − x)^b / B(a, b) about its peak: plain logarithms of gamma would lose the digits that their size takes.
function densityFront(x: number, rest: number, a: number, b: number): number {
  const sum = a + b;
  const offset = x * b - rest * a;
  const shape = stirlingError(sum) - stirlingError(a) - stirlingError(b);
  const peak = Math.sqrt(((a / sum) * b) / (2 * Math.PI));
  return peak * Math.exp(shape + a * bend(offset / a, (x / a) * sum) + b * bend(-offset / b, (rest / b) * sum));
}

// ln(1 + u) − u, where `ratio` is 1 + u without the loss of digits near 0.
function bend(u: number, ratio: number): number {
  if (u < -0.4 || u > 0.6) return Math.log(ratio) - u;
  const r = u / (2 + u);
  const square = r * r;
  let power = r * square;
  let sum = 0;
  for (let n = 3; n < 31; n += 2) {
    sum += power / n;
    power *= square;
  }
  return 2 * sum - r * u;
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
