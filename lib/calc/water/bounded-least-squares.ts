/** Minimise ‖Σ xⱼ columnⱼ − target‖ with 0 ≤ xⱼ ≤ upperⱼ. */
export interface BoundedProblem {
  readonly columns: readonly (readonly number[])[];
  readonly target: readonly number[];
  readonly upper: readonly number[];
}

type Place = "low" | "free" | "high";

/** Slopes below this share of the largest possible count as none; rounding leaves about 1e-15. */
const FLAT = 1e-11;
/** A few dozen rounds settle problems of this size; it is only met if rounding made the method go in circles. */
const MAX_ROUNDS = 200;

/**
 * Solves a small least-squares problem between bounds by active sets (Lawson and Hanson, with upper bounds).
 *
 * Unknowns enter one at a time where the slope is steepest and leave where they meet a bound, so that of several equal
 * answers one with few non-zero unknowns is given.
 *
 * @returns The unknowns, in the order of the columns.
 * @source Lawson and Hanson 1974, chapter 23 (docs/sources.md#lawson-hanson-1974)
 * @example
 * boundedLeastSquares({ columns: [[1, 0], [0, 1]], target: [2, -1], upper: [1, 1] }); // [1, 0]
 */
export function boundedLeastSquares({ columns, target, upper }: BoundedProblem): number[] {
  const lengths = columns.map((column) => Math.sqrt(dot(column, column)));
  const scale = Math.sqrt(dot(target, target)) + columns.reduce((sum, _, j) => sum + at(lengths, j) * at(upper, j), 0);
  const places: Place[] = columns.map(() => "low");
  const x = columns.map(() => 0);
  for (let round = 0; round < MAX_ROUNDS; round++) {
    const entering = steepest({ columns, target, upper }, x, places, lengths, FLAT * scale);
    if (entering === -1) break;
    places[entering] = "free";
    while (!stepToFree({ columns, target, upper }, x, places));
  }
  return x;
}

// The unknown at a bound that would lower the sum of squares fastest by moving inwards, or −1.
function steepest(
  { columns, target, upper }: BoundedProblem,
  x: readonly number[],
  places: readonly Place[],
  lengths: readonly number[],
  flat: number,
): number {
  const residual = residualOf(columns, target, x);
  let best = -1;
  let bestSlope = flat;
  columns.forEach((column, j) => {
    const length = at(lengths, j);
    if (places[j] === "free" || length === 0 || at(upper, j) === 0) return;
    const slope = (dot(column, residual) / length) * (places[j] === "low" ? 1 : -1);
    if (slope > bestSlope) {
      bestSlope = slope;
      best = j;
    }
  });
  return best;
}

// Moves towards the best point of the free unknowns as far as the bounds let it; true when it got there.
function stepToFree({ columns, target, upper }: BoundedProblem, x: number[], places: Place[]): boolean {
  const free = places.flatMap((place, j) => (place === "free" ? [j] : []));
  const held = x.map((value, j) => (places[j] === "free" ? 0 : value));
  const aim = leastSquares(
    free.map((j) => columns[j] ?? []),
    residualOf(columns, target, held),
  );
  let share = 1;
  let stops = -1;
  free.forEach((j, k) => {
    const from = at(x, j);
    const to = at(aim, k);
    const bound = to < 0 ? 0 : at(upper, j);
    if (to >= 0 && to <= bound) return;
    const reach = (bound - from) / (to - from);
    if (stops === -1 || reach < share) {
      share = Math.max(0, reach);
      stops = j;
    }
  });
  free.forEach((j, k) => {
    x[j] = at(x, j) + share * (at(aim, k) - at(x, j));
  });
  if (stops === -1) return true;
  const wentDown = at(aim, free.indexOf(stops)) < 0;
  places[stops] = wentDown ? "low" : "high";
  x[stops] = wentDown ? 0 : at(upper, stops);
  return false;
}

// Modified Gram–Schmidt; a column that is spanned by those before it gets no weight.
function leastSquares(columns: readonly (readonly number[])[], target: readonly number[]): number[] {
  const basis: number[][] = [];
  const factors: number[][] = [];
  const right: number[] = [];
  let rest = [...target];
  for (const column of columns) {
    let direction = [...column];
    const row = basis.map((q) => {
      const along = dot(q, direction);
      direction = direction.map((value, i) => value - along * at(q, i));
      return along;
    });
    const length = Math.sqrt(dot(direction, direction));
    const spanned = length <= 1e-10 * Math.sqrt(dot(column, column));
    const q = direction.map((value) => (spanned ? 0 : value / length));
    const along = dot(q, rest);
    rest = rest.map((value, i) => value - along * at(q, i));
    basis.push(q);
    factors.push([...row, spanned ? 1 : length]);
    right.push(along);
  }
  const x = columns.map(() => 0);
  for (let j = columns.length - 1; j >= 0; j--) {
    let value = at(right, j);
    for (let k = j + 1; k < columns.length; k++) value -= (factors[k]?.[j] ?? 0) * at(x, k);
    x[j] = value / (factors[j]?.[j] ?? 1);
  }
  return x;
}

function residualOf(
  columns: readonly (readonly number[])[],
  target: readonly number[],
  x: readonly number[],
): number[] {
  return target.map((value, i) => columns.reduce((rest, column, j) => rest - at(x, j) * at(column, i), value));
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * at(b, i), 0);
}

function at(values: readonly number[], i: number): number {
  return values[i] ?? 0;
}
