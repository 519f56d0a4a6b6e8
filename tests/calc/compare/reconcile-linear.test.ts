import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reconcileLinear } from "@/lib/calc/compare";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

const balance = (coefficients: readonly number[], equals = 0) => ({ coefficients, equals });

/**
 * Narasimhan and Jordache, Data Reconciliation and Gross Error Detection, Gulf 2000: the heat exchanger with a bypass,
 * six flows of unit variance, four nodes. Figures from memory; the normal equations worked by hand in
 * docs/worked-examples.md#bypass give the same.
 */
const BYPASS = {
  measured: [101.91, 64.45, 34.65, 64.2, 36.44, 98.88],
  sigma: [1, 1, 1, 1, 1, 1],
  constraints: [
    balance([1, -1, -1, 0, 0, 0]),
    balance([0, 1, 0, -1, 0, 0]),
    balance([0, 0, 1, 0, -1, 0]),
    balance([0, 0, 0, 1, 1, -1]),
  ],
};

describe("reconcileLinear", () => {
  it("gives the flows of the exchanger with a bypass as printed (Narasimhan and Jordache 2000)", () => {
    const printed = ["100.22", "64.50", "35.72", "64.50", "35.72", "100.22"];
    reconcileLinear(BYPASS).reconciled.forEach((flow, i) => expectPrinted(flow, printed[i] ?? ""));
  });

  it("finds the global test of the exchanger with 4 t/h too much in its second flow (Narasimhan and Jordache 2000)", () => {
    const biased = { ...BYPASS, measured: [101.91, 68.45, 34.65, 64.2, 36.44, 98.88] };
    const { chiSquared, df, z } = reconcileLinear(biased);
    expect(df).toBe(4);
    // Printed 16.674 against a critical 9.488; from memory, and by hand in docs/worked-examples.md#bypass.
    expectPrinted(chiSquared, "16.674");
    const largest = z.reduce((best, each, i) => (Math.abs(each) > Math.abs(z[best] ?? 0) ? i : best), 0);
    expect(largest).toBe(1);
  });

  it("takes the weighted mean of two readings of one thing (closed form)", () => {
    const result = reconcileLinear({ measured: [10, 16], sigma: [1, 2], constraints: [balance([1, -1])] });
    // Weights 1 and 1/4: (10 + 16/4) / (5/4) = 11.2; variance 1/(5/4); χ² = 6²/(1 + 4); z = 6/√5 either way.
    expect(result.reconciled).toEqual([expect.closeTo(11.2, 12), expect.closeTo(11.2, 12)]);
    expectWithin(result.reconciledSigma[0] ?? 0, Math.sqrt(0.8), 1e-12);
    expectWithin(result.chiSquared, 7.2, 1e-12);
    expectWithin(result.z[0] ?? 0, 6 / Math.sqrt(5), 1e-12);
    expectWithin(result.z[1] ?? 0, -6 / Math.sqrt(5), 1e-12);
  });

  const value = fc.double({ min: -100, max: 100, noNaN: true });
  const uncertainty = fc.double({ min: 0.01, max: 10, noNaN: true });
  const problem = fc.record({
    measured: fc.array(value, { minLength: 5, maxLength: 5 }),
    sigma: fc.array(uncertainty, { minLength: 5, maxLength: 5 }),
    // The first two columns keep the two balances independent.
    free: fc.array(value, { minLength: 8, maxLength: 8 }),
  });
  const constraintsOf = (free: readonly number[]) => [
    balance([1, 0, ...free.slice(0, 3)], free[6]),
    balance([0, 1, ...free.slice(3, 6)], free[7]),
  ];

  it("makes every balance hold (law)", () => {
    fc.assert(
      fc.property(problem, ({ measured, sigma, free }) => {
        const constraints = constraintsOf(free);
        const { reconciled } = reconcileLinear({ measured, sigma, constraints });
        for (const { coefficients, equals } of constraints) {
          const terms = coefficients.map((each, i) => each * (reconciled[i] ?? 0));
          const scale = terms.reduce((sum, term) => sum + Math.abs(term), Math.abs(equals)) + 1;
          expectWithin(
            terms.reduce((sum, term) => sum + term, 0),
            equals,
            1e-10 * scale,
          );
        }
      }),
    );
  });

  it("leaves values alone that balance already (law)", () => {
    fc.assert(
      fc.property(problem, ({ measured, sigma, free }) => {
        const constraints = constraintsOf(free).map(({ coefficients }) => ({
          coefficients,
          equals: coefficients.reduce((sum, each, i) => sum + each * (measured[i] ?? 0), 0),
        }));
        const { reconciled, chiSquared, p } = reconcileLinear({ measured, sigma, constraints });
        reconciled.forEach((each, i) => expectWithin(each, measured[i] ?? 0, 1e-9));
        expectWithin(chiSquared, 0, 1e-9);
        expectWithin(p, 1, 1e-6);
      }),
    );
  });

  it("gives the same values for uncertainties all k times as large, and χ² smaller by k² (law)", () => {
    fc.assert(
      fc.property(problem, fc.double({ min: 0.1, max: 10, noNaN: true }), ({ measured, sigma, free }, k) => {
        const constraints = constraintsOf(free);
        const once = reconcileLinear({ measured, sigma, constraints });
        const wider = reconcileLinear({ measured, sigma: sigma.map((each) => k * each), constraints });
        wider.reconciled.forEach((each, i) => expectWithin(each, once.reconciled[i] ?? 0, 1e-8));
        expectWithin(wider.chiSquared * k * k, once.chiSquared, 1e-8 * (1 + once.chiSquared));
      }),
    );
  });

  it("never makes a value less certain, and moves none that no balance holds (law)", () => {
    fc.assert(
      fc.property(problem, ({ measured, sigma, free }) => {
        const constraints = constraintsOf(free).map(({ coefficients, equals }) => ({
          coefficients: [...coefficients, 0],
          equals,
        }));
        const result = reconcileLinear({ measured: [...measured, 7], sigma: [...sigma, 2], constraints });
        result.reconciledSigma.forEach((each, i) => expect(each).toBeLessThanOrEqual((sigma[i] ?? 2) + 1e-12));
        expect([result.reconciled[5], result.reconciledSigma[5], result.z[5]]).toEqual([7, 2, 0]);
      }),
    );
  });

  it("counts a balance once that is written twice", () => {
    const twice = reconcileLinear({ ...BYPASS, constraints: [...BYPASS.constraints, balance([1, 0, 0, 0, 0, -1])] });
    // The fifth, all in = all out, is the sum of the four.
    expect(twice.df).toBe(4);
    expectWithin(twice.chiSquared, reconcileLinear(BYPASS).chiSquared, 1e-9);
  });

  it("answers without balances with the measured values", () => {
    expect(reconcileLinear({ measured: [3], sigma: [1], constraints: [] })).toMatchObject({ reconciled: [3], p: 1 });
  });

  it("refuses balances that contradict each other, uncertainties of 0 and lists of different lengths", () => {
    const contradiction = [balance([1, 1], 2), balance([2, 2], 5)];
    const bad = { measured: [1, 1], sigma: [1, 1] };
    expect(() => reconcileLinear({ ...bad, constraints: contradiction })).toThrow("contradicts");
    expect(() => reconcileLinear({ measured: [1, 1], sigma: [1, 0], constraints: [] })).toThrow("uncertainty 0");
    expect(() => reconcileLinear({ measured: [1, 1], sigma: [1], constraints: [] })).toThrow(
      "number of uncertainties 1",
    );
    expect(() => reconcileLinear({ ...bad, constraints: [balance([1])] })).toThrow("number of coefficients 1");
    expect(() => reconcileLinear({ measured: [Number.NaN], sigma: [1], constraints: [] })).toThrow(
      "measured value NaN",
    );
  });
});
