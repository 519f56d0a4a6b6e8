import { describe, expect, it } from "vitest";
import { withinBounds } from "@/lib/calc/learn/posterior";
import { FIGURES, type FigurePlace } from "@/lib/calc/ledger";

const anyPlace = FIGURES[0];
if (anyPlace === undefined) throw new Error("there are no figures");
const bounded = (min: number, max: number): FigurePlace => ({ ...anyPlace, range: { unit: "", min, max } });

/** Mean and variance of a standard normal between two bounds, by Simpson's rule. */
function integrated(low: number, high: number): { readonly mean: number; readonly variance: number } {
  const steps = 20_000;
  const width = (high - low) / steps;
  const moments = [0, 0, 0];
  for (let i = 0; i <= steps; i++) {
    const x = low + i * width;
    const weight = (i === 0 || i === steps ? 1 : i % 2 === 0 ? 2 : 4) * Math.exp(-(x ** 2) / 2);
    moments.forEach((sum, k) => (moments[k] = sum + weight * x ** k));
  }
  const [whole = 1, first = 0, second = 0] = moments;
  return { mean: first / whole, variance: second / whole - (first / whole) ** 2 };
}

describe("withinBounds", () => {
  it.each([
    [-1, 9],
    [0.5, 9],
    [-9, 1.5],
    [-0.3, 0.8],
  ])("cuts a figure off at %f and %f as integration does", (low, high) => {
    const prior = { places: [bounded(low, high)], centre: [0], unit: [1] };
    const cut = withinBounds(prior, { mean: Float64Array.of(0), covariance: Float64Array.of(1) });
    const wanted = integrated(low, high);
    // Beyond five standard deviations it has one part in a million less to integrate.
    expect(cut.mean[0]).toBeCloseTo(wanted.mean, 4);
    expect(cut.covariance[0]).toBeCloseTo(wanted.variance, 4);
  });

  it("takes another figure along as far as it is tied to the one that is cut", () => {
    const prior = { places: [bounded(0, 100), bounded(-100, 100)], centre: [0, 0], unit: [1, 1] };
    const whole = { mean: Float64Array.of(0, 0), covariance: Float64Array.of(1, 0.6, 0.6, 2) };
    const { mean, covariance } = withinBounds(prior, whole);
    // The half of a normal curve, by hand: mean √(2/π), variance 1 − 2/π. The other follows with its slope 0.6.
    expect(mean[0]).toBeCloseTo(Math.sqrt(2 / Math.PI), 4);
    expect(mean[1]).toBeCloseTo(0.6 * Math.sqrt(2 / Math.PI), 4);
    expect(covariance[3]).toBeCloseTo(2 - 0.36 * (2 / Math.PI), 4);
  });
});
