import { describe, expect, it } from "vitest";
import { quasiRandom } from "@/lib/calc/numerics";
import { expectWithin } from "../../support/expect-within";

/** Park and Miller's generator: points of chance to compare with. */
function chance(dimension: number, count: number, seed: number): number[][] {
  let state = seed;
  const next = (): number => (state = (state * 48271) % 2147483647) / 2147483647;
  return Array.from({ length: count }, () => Array.from({ length: dimension }, next));
}

/** Largest difference between the share of points in a box from the origin and its area, over a grid of boxes. */
function discrepancy(points: readonly (readonly number[])[]): number {
  let worst = 0;
  for (let i = 1; i <= 20; i++) {
    for (let j = 1; j <= 20; j++) {
      const inside = points.filter(([x = 0, y = 0]) => x < i / 20 && y < j / 20).length;
      worst = Math.max(worst, Math.abs(inside / points.length - (i * j) / 400));
    }
  }
  return worst;
}

const mean = (points: readonly (readonly number[])[], f: (point: readonly number[]) => number): number =>
  points.reduce((sum, point) => sum + f(point), 0) / points.length;

describe("quasiRandom", () => {
  it("lies evener in the square than chance, for any seed", () => {
    for (const seed of [0, 1, 2, 77]) {
      const even = discrepancy(quasiRandom({ dimension: 2, count: 1000, seed }));
      expect(even).toBeLessThan(discrepancy(chance(2, 1000, seed + 1)) / 2);
      // Twenty in a thousand would be the scatter of chance itself.
      expect(even).toBeLessThan(0.01);
    }
  });

  it.each([1, 2, 5, 12, 40])("gives each of %i coordinates the mean and the square of an even spread", (dimension) => {
    const points = quasiRandom({ dimension, count: 4000, seed: 3 });
    for (let j = 0; j < dimension; j++) {
      expectWithin(
        mean(points, (point) => point[j] ?? NaN),
        1 / 2,
        0.002,
      );
      expectWithin(
        mean(points, (point) => (point[j] ?? NaN) ** 2),
        1 / 3,
        0.002,
      );
    }
  });

  it("keeps the coordinates apart: the product of two has mean 1/4", () => {
    const points = quasiRandom({ dimension: 12, count: 4000, seed: 9 });
    for (let j = 0; j < 12; j++)
      for (let k = 0; k < j; k++)
        expectWithin(
          mean(points, (point) => (point[j] ?? NaN) * (point[k] ?? NaN)),
          1 / 4,
          0.004,
        );
  });

  it("integrates a product of five factors of mean 1 four times closer than chance on average", () => {
    const f = (point: readonly number[]): number => point.reduce((product, x) => product * (1.5 * Math.sqrt(x)), 1);
    const error = (points: readonly (readonly number[])[]): number => (mean(points, f) - 1) ** 2;
    const seeds = Array.from({ length: 20 }, (_, i) => i);
    const even = seeds.reduce((sum, seed) => sum + error(quasiRandom({ dimension: 5, count: 4000, seed })), 0);
    const random = seeds.reduce((sum, seed) => sum + error(chance(5, 4000, 100 + seed)), 0);
    expect(Math.sqrt(even)).toBeLessThan(Math.sqrt(random) / 4);
  });

  it("moves on by √2 and √3 from where the seed starts, fractions kept (by definition)", () => {
    const points = quasiRandom({ dimension: 2, count: 50, seed: 5 });
    points.forEach(([x = NaN, y = NaN], i) => {
      const [x0 = NaN, y0 = NaN] = points[0] ?? [];
      expectWithin((x - x0 - i * Math.SQRT2) % 1, Math.round((x - x0 - i * Math.SQRT2) % 1), 1e-12);
      expectWithin((y - y0 - i * Math.sqrt(3)) % 1, Math.round((y - y0 - i * Math.sqrt(3)) % 1), 1e-12);
    });
  });

  it("is the same for the same seed and another for another", () => {
    const a = quasiRandom({ dimension: 3, count: 10, seed: 1 });
    expect(quasiRandom({ dimension: 3, count: 10, seed: 1 })).toEqual(a);
    expect(quasiRandom({ dimension: 3, count: 10, seed: 2 })[0]).not.toEqual(a[0]);
    expect(quasiRandom({ dimension: 3, count: 5, seed: 1 })).toEqual(a.slice(0, 5));
  });

  it("stays inside the cube, ends left out", () => {
    for (const seed of [0, 4294967295])
      for (const point of quasiRandom({ dimension: 40, count: 500, seed }))
        for (const x of point) expect(x > 0 && x < 1).toBe(true);
  });

  it("refuses numbers out of range or broken", () => {
    const make = (change: object): unknown => quasiRandom({ dimension: 2, count: 10, seed: 1, ...change });
    expect(() => make({ dimension: 0 })).toThrow("dimension 0 is outside 1 to 40");
    expect(() => make({ dimension: 41 })).toThrow("dimension 41 is outside 1 to 40");
    expect(() => make({ count: 0 })).toThrow("number of points 0 is outside 1 to 100000");
    expect(() => make({ count: 1.5 })).toThrow("number of points 1.5");
    expect(() => make({ seed: -1 })).toThrow("seed -1 is outside 0 to 4294967295");
    expect(() => make({ seed: NaN })).toThrow("seed NaN");
  });
});
