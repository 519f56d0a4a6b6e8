import { describe, expect, it } from "vitest";
import { heatUp } from "@/lib/calc/heat";
import { commissionHeating, type HeatingFigures, type HeatingRun } from "@/lib/calc/learn";
import {
  celsius,
  degreesPlato,
  fraction,
  joulesPerKelvin,
  kilograms,
  squareMetres,
  watts,
  wattsPerKelvin,
} from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";
import { seededNoise } from "../../support/seeded-noise";
import { AMBIENT_C, closedForm, KNOWN } from "../../support/trial-readings";

const STATED = { value: joulesPerKelvin(4000), sd: 0 };
const BOIL = celsius(100);
const every = (step: number, until: number): number[] => Array.from({ length: until / step + 1 }, (_, i) => i * step);

function figures(runs: readonly HeatingRun[], vesselHeatCapacity = STATED): HeatingFigures {
  const found = commissionHeating({ runs, boilingC: BOIL, vesselHeatCapacity });
  if (!found.ok) throw new Error(JSON.stringify(found));
  return found;
}

/** 25 kg from 15 °C: under the closed form 85.5 °C after an hour. */
const upTo = (minutes: readonly number[], noise?: () => number): HeatingRun =>
  closedForm({ kettle: KNOWN, kind: "heating", kg: 25, fromC: 15, minutes, sd: 0.3, ...(noise ? { noise } : {}) });
const downFrom = (minutes: readonly number[], noise?: () => number): HeatingRun =>
  closedForm({ kettle: KNOWN, kind: "cooling", kg: 25, fromC: 94, minutes, sd: 0.3, ...(noise ? { noise } : {}) });

describe("commissionHeating", () => {
  it("finds power and loss of first-order heating, by its closed form", () => {
    const found = figures([upTo(every(10, 60))]);
    expectWithin(found.power?.value ?? NaN, 2400, 1e-4 * 2400);
    expectWithin(found.lossCoefficient.value, 8, 0.02);
    expect(found.scatter.chiSquared).toBeLessThan(1e-6);
  });

  it("finds the loss alone from cooling: ln(76 K / 58.31 K) × 108 670 J/K / 3600 s is 8 W/K, and no power", () => {
    const found = figures([downFrom(every(20, 120))]);
    expect(found.power).toBeNull();
    expectWithin(found.lossCoefficient.value, 8, 1e-3);
  });

  it("counts what evaporates from an open kettle as heatUp does", () => {
    const openAreaM2 = squareMetres(0.1);
    const kettle = {
      massKg: kilograms(25),
      plato: degreesPlato(0),
      vesselHeatCapacity: joulesPerKelvin(4000),
      powerW: watts(3000),
      lossCoefficient: wattsPerKelvin(8),
      openAreaM2,
      fromC: celsius(15),
      ambientC: celsius(AMBIENT_C),
      relativeHumidity: fraction(0.5),
    };
    const readings = [15, 30, 45, 60, 75, 85, 95].map((at) => {
      const reached = heatUp({ ...kettle, toC: celsius(at) });
      return { seconds: reached.ok ? reached.seconds : NaN, celsius: celsius(at), sd: 0.3 };
    });
    const run: HeatingRun = { ...upTo([0]), openAreaM2, readings };
    const found = figures([run]);
    expectWithin(found.power?.value ?? NaN, 3000, 1);
    expectWithin(found.lossCoefficient.value, 8, 0.05);
  });

  it("covers power and loss with its 80 % intervals in 70 to 90 of 100 noisy trials", () => {
    // 80 of 100 have a binomial sd of 4: 2.5 of them either way.
    let [power, loss] = [0, 0];
    for (let seed = 1; seed <= 100; seed++) {
      const noise = seededNoise(7919 * seed);
      const found = figures([upTo(every(5, 60), noise), downFrom(every(15, 60), noise)]);
      const covers = (value: number, error: number, known: number): number =>
        Math.abs(value - known) <= 1.2816 * error ? 1 : 0;
      power += covers(found.power?.value ?? NaN, found.power?.standardError ?? NaN, 2400);
      loss += covers(found.lossCoefficient.value, found.lossCoefficient.standardError, 8);
    }
    expect(power).toBeGreaterThanOrEqual(70);
    expect(power).toBeLessThanOrEqual(90);
    expect(loss).toBeGreaterThanOrEqual(70);
    expect(loss).toBeLessThanOrEqual(90);
  });

  it("passes on what is not known of the water: 2 % of 25 kg is 2 % of the heat that warms it", () => {
    const sure = figures([upTo(every(5, 60)), downFrom(every(15, 60))]);
    const unsure = [upTo(every(5, 60)), downFrom(every(15, 60))].map((run) => ({
      ...run,
      water: { value: kilograms(25), sd: 0.5 },
    }));
    const found = figures(unsure);
    const added = Math.sqrt((found.power?.standardError ?? NaN) ** 2 - (sure.power?.standardError ?? NaN) ** 2);
    // Both runs were filled for themselves, so the ramp alone tells little less than the water of the ramp.
    expect(added).toBeGreaterThan(0.7 * 0.02 * 2400);
    expect(added).toBeLessThan(1.05 * 0.02 * 2400);
  });

  it("tells the vessel from two different amounts of water, and not from one", () => {
    const stated = { value: joulesPerKelvin(6000), sd: 3000 };
    const ramp = (kg: number, minutes: number): HeatingRun =>
      closedForm({ kettle: KNOWN, kind: "heating", kg, fromC: 15, minutes: every(5, minutes), sd: 0.1 });
    const both = figures([ramp(25, 60), ramp(10, 25), downFrom(every(15, 60))], stated);
    expect(both.vesselHeatCapacity?.standardError).toBeLessThan(1500);
    const error = both.vesselHeatCapacity?.standardError ?? NaN;
    expectWithin(both.vesselHeatCapacity?.value ?? NaN, 4000, 2 * error);
    expect(figures([ramp(25, 60)], stated).vesselHeatCapacity).toBeNull();
  });

  it("widens its errors where readings scatter more than stated", () => {
    const noise = seededNoise(11);
    const wild = (): number => 4 * noise();
    const found = figures([upTo(every(5, 60), wild), downFrom(every(15, 60), wild)]);
    expect(found.scatter.p).toBeLessThan(0.01);
    expectWithin(found.scatter.widened, Math.sqrt(found.scatter.chiSquared / found.scatter.df), 1e-12);
    expect(found.scatter.widened).toBeGreaterThan(2);
  });

  it("leaves out readings next to the boil", () => {
    const run = upTo(every(10, 60));
    const last = { seconds: 3900, celsius: celsius(99.5), sd: 0.3 };
    const found = figures([{ ...run, readings: [...run.readings, last, { ...last, seconds: 4500 }] }]);
    expect(found.leftOut).toBe(2);
    expect(found.residuals[0]?.slice(-2)).toEqual([null, null]);
    expectWithin(found.power?.value ?? NaN, 2400, 1);
  });
});

describe("what commissionHeating cannot tell", () => {
  const outcome = (...runs: readonly HeatingRun[]): unknown =>
    commissionHeating({ runs, boilingC: BOIL, vesselHeatCapacity: STATED });

  it("is power and loss from a short straight ramp: a reading near the boil would, and an hour of cooling", () => {
    expect(outcome(upTo([0, 4, 8, 12]))).toEqual({ ok: false, reason: "not-separable", needs: ["hotter", "cooling"] });
    // And so it is, with that one reading.
    expect(outcome(upTo([0, 4, 8, 12, 62]))).toMatchObject({ ok: true });
    expect(outcome(upTo([0, 4, 8, 12]), downFrom([0, 20, 40, 60]))).toMatchObject({ ok: true });
  });

  it("is anything from two readings, or from a run that goes the wrong way", () => {
    expect(outcome(upTo([0, 30]))).toEqual({ ok: false, reason: "too-few-readings", run: 0 });
    expect(outcome(upTo(every(10, 60)), { ...downFrom([0, 20, 40]), kind: "heating" })).toEqual({
      ok: false,
      reason: "does-not-rise",
      run: 1,
    });
    expect(outcome({ ...upTo([0, 20, 40]), kind: "cooling" })).toEqual({ ok: false, reason: "does-not-fall", run: 0 });
  });

  it("is refused with readings out of order, and with no run at all", () => {
    const run = upTo([0, 10, 20]);
    expect(() => outcome({ ...run, readings: run.readings.toReversed() })).toThrow(
      "time of a reading 600 s is outside 1200",
    );
    expect(() => outcome()).toThrow("number of runs 0");
  });
});
