import { describe, expect, it } from "vitest";
import { variancePartition } from "@/lib/calc/statistics";

/** docs/sources.md#hemmerle-hartley-1973: an unbalanced layout of three by two, as published. */
const CELLS: readonly (readonly [a: string, b: string, values: readonly number[]])[] = [
  ["1", "1", [237, 254, 246]],
  ["1", "2", [178, 179]],
  ["2", "1", [208, 178, 187]],
  ["2", "2", [146, 145, 141]],
  ["3", "1", [186, 183]],
  ["3", "2", [142, 125, 136]],
];
const ROWS = CELLS.flatMap(([a, b, values]) => values.map((value) => ({ a, b, value })));

/**
 * The restricted likelihood from its definition: the covariance of all pairs of values written out, and eliminated as a
 * whole. Nothing of it is shared with the library, which works in the size of the levels.
 */
function logLikelihood([ofA, ofB, rest]: readonly [number, number, number]): number {
  const matrix = ROWS.map((x, i) => [
    ...ROWS.map((y, j) => (x.a === y.a ? ofA : 0) + (x.b === y.b ? ofB : 0) + (i === j ? rest : 0)),
    ...[1, x.value],
  ]);
  const n = ROWS.length;
  const right = [1, 1].map((_, k) => matrix.map((row) => row[n + k] ?? 0));
  let logDeterminant = 0;
  matrix.forEach((row, i) => {
    const pivot = row[i] ?? 1;
    logDeterminant += Math.log(pivot);
    row.forEach((entry, j) => (row[j] = entry / pivot));
    matrix.forEach((other, k) => {
      const times = other[i] ?? 0;
      if (k !== i) row.forEach((entry, j) => (other[j] = (other[j] ?? 0) - times * entry));
    });
  });
  const product = (k: number, l: number): number =>
    (right[k] ?? []).reduce((sum, value, i) => sum + value * (matrix[i]?.[n + l] ?? 0), 0);
  const [ones, cross, squares] = [product(0, 0), product(0, 1), product(1, 1)];
  return -(logDeterminant + Math.log(ones) + squares - cross ** 2 / ones) / 2;
}

/** The largest value of a function with one summit, by golden section. */
function summit(f: (x: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  while (high - low > 1e-4) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (f(left) > f(right)) high = right;
    else low = left;
  }
  return f((low + high) / 2);
}

/** The likelihood with one variance held and the two others wherever it is largest, between e^-4 and e^14. */
function profile(place: number, held: number): number {
  const others = [0, 1, 2].filter((i) => i !== place);
  const at = (x: number, y: number): number => {
    const all = [held, held, held];
    others.forEach((i, k) => (all[i] = Math.exp(k === 0 ? x : y)));
    return logLikelihood([all[0] ?? 0, all[1] ?? 0, all[2] ?? 0]);
  };
  return summit((x) => summit((y) => at(x, y), -4, 14), -4, 14);
}

describe("variancePartition of an unbalanced layout", () => {
  const partition = variancePartition({
    observations: ROWS.map(({ a, b, value }) => ({ value, brewer: a, equipment: b, revision: "1" })),
  });
  if (!partition.ok || partition.brewer === null || partition.equipment === null) throw new Error("not told");
  const { brewer, equipment, residual } = partition;
  const best = [brewer.variance, equipment.variance, residual.variance] as const;

  it("stands where the likelihood, worked from its definition, is largest (Hemmerle and Hartley 1973)", () => {
    const there = logLikelihood(best);
    for (const place of [0, 1, 2]) {
      for (const by of [0.99, 1.01]) {
        const [a, b, rest] = best.map((variance, i) => (i === place ? by * variance : variance));
        expect(logLikelihood([a ?? 0, b ?? 0, rest ?? 0])).toBeLessThan(there);
      }
    }
  });

  it("is at its summit: a hundredth up and down falls alike, to a fiftieth of the fall", () => {
    const fall = (place: number, by: number): number => {
      const [a, b, rest] = best.map((variance, i) => (i === place ? by * variance : variance));
      return logLikelihood(best) - logLikelihood([a ?? 0, b ?? 0, rest ?? 0]);
    };
    // In the logarithm of a variance the summit is nearly even.
    for (const place of [0, 1, 2]) {
      const [up, down] = [fall(place, Math.exp(0.01)), fall(place, Math.exp(-0.01))];
      expect(Math.abs(up - down)).toBeLessThan(0.02 * (up + down));
    }
  });

  it("ends each interval where the likelihood, worked from its definition, has fallen by χ² of 80 %", () => {
    // χ² of 80 % on one degree of freedom is 1.642 (NIST e-Handbook).
    [brewer, equipment, residual].forEach(({ low80, high80 }, place) => {
      for (const end of [low80, high80 ?? NaN]) {
        const fall = 2 * (logLikelihood(best) - profile(place, end));
        expect(Math.abs(fall - 1.642)).toBeLessThan(0.001);
      }
    });
  });
});
