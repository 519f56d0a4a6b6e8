import { describe, expect, it } from "vitest";
import { boilOffRate } from "@/lib/calc/heat";
import { commissionBoilOff, type BoilOffRun, type TimedVolume } from "@/lib/calc/learn";
import { celsius, litres, watts, wattsPerKelvin } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";
import { seededNoise } from "../../support/seeded-noise";

const BOIL = celsius(100);
/** Density of water at 100 °C and heat of evaporation, as the steam tables print them. */
const HOT_KG_PER_L = 0.95835;
const LATENT_KJ_PER_KG = 2256.4;

const volume = (minute: number, value: number, sd = 0.1, at = 100): TimedVolume => ({
  seconds: 60 * minute,
  litres: litres(value),
  celsius: celsius(at),
  sd,
});
const trial = (...runs: readonly BoilOffRun[]): ReturnType<typeof commissionBoilOff> =>
  commissionBoilOff({ runs, boilingC: BOIL });

describe("commissionBoilOff", () => {
  it("is 3 hot litres in an hour: 2.875 kg/h, ± √2 × 0.0958, and 1.802 kW in the steam", () => {
    const found = trial({ readings: [volume(0, 30), volume(60, 27)] });
    if (!found.ok) throw new Error(found.reason);
    expectWithin(found.rate.value, 3 * HOT_KG_PER_L, 1e-4);
    expectWithin(found.rate.standardError, Math.SQRT2 * 0.1 * HOT_KG_PER_L, 1e-5);
    expectWithin(found.steamPower.value, (3 * HOT_KG_PER_L * LATENT_KJ_PER_KG) / 3.6, 0.2);
    expect(found.scatter).toEqual({ chiSquared: expect.closeTo(0, 9) as number, df: 0, p: 1, widened: 1 });
  });

  it("runs the line of least squares through four volumes: slope and error by the closed form", () => {
    const values = [30, 29.1, 27.9, 27.1];
    const found = trial({ readings: values.map((value, i) => volume(20 * i, value)) });
    if (!found.ok) throw new Error(found.reason);
    // Hours −1/2, −1/6, 1/6, 1/2 about their mean: Σx² = 5/9; Σxy = −(2.9/2 + 1.2/6) = −1.65.
    expectWithin(found.rate.value, (1.65 / (5 / 9)) * HOT_KG_PER_L, 1e-3);
    expectWithin(found.rate.standardError, (0.1 / Math.sqrt(5 / 9)) * HOT_KG_PER_L, 1e-5);
  });

  it("shares the slope of two boils, so that the error is √2 smaller", () => {
    const run = { readings: [volume(0, 30), volume(60, 27)] };
    const [one, two] = [trial(run), trial(run, run)];
    if (!one.ok || !two.ok) throw new Error("both are told");
    expectWithin(two.rate.value, one.rate.value, 1e-9);
    expectWithin(two.rate.standardError, one.rate.standardError / Math.SQRT2, 1e-7);
  });

  it("finds what boilOffRate says of a kettle of known power, read cold before and after", () => {
    const known = boilOffRate({
      powerW: watts(2400),
      lossCoefficient: wattsPerKelvin(8),
      boilingC: BOIL,
      ambientC: celsius(18),
    });
    if (!known.ok) throw new Error(known.reason);
    // Water of 20 °C: 0.99821 kg/L.
    const after = 28 - known.kilogramsPerHour / 0.99821;
    const found = trial({ readings: [volume(0, 28, 0.1, 20), volume(60, after, 0.1, 20)] });
    expectWithin(found.ok ? found.rate.value : NaN, known.kilogramsPerHour, 1e-4);
    expectWithin(found.ok ? found.steamPower.value : NaN, 2400 - 8 * 82, 0.1);
  });

  it("covers the rate with its 80 % interval in 145 to 175 of 200 noisy boils", () => {
    // 160 of 200 have a binomial sd of 5.7: 2.6 of them either way.
    let covered = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const noise = seededNoise(6977 * seed);
      const readings = [0, 20, 40, 60].map((minute) => volume(minute, 30 - minute / 20 + 0.1 * noise()));
      const found = trial({ readings });
      if (found.ok && Math.abs(found.rate.value - 3 * HOT_KG_PER_L) <= 1.2816 * found.rate.standardError) covered++;
    }
    expect(covered).toBeGreaterThanOrEqual(145);
    expect(covered).toBeLessThanOrEqual(175);
  });

  it("says how long a boil would tell: 5 minutes of 0.25 L ± 0.14 want 30", () => {
    // 0.1414 of 0.25 is 57 %, so that a tenth takes 5.7 × 5 = 28.3 minutes, on the next five.
    const found = trial({ readings: [volume(0, 30), volume(5, 29.75)] });
    expect(found).toEqual({ ok: false, reason: "too-short", minutesNeeded: 30 });
  });

  it("refuses one reading, a volume that rises, and readings out of order", () => {
    expect(trial({ readings: [volume(0, 30)] })).toEqual({ ok: false, reason: "too-few-readings", run: 0 });
    expect(trial({ readings: [volume(0, 30), volume(60, 31)] })).toEqual({
      ok: false,
      reason: "too-short",
      minutesNeeded: null,
    });
    expect(() => trial({ readings: [volume(60, 30), volume(0, 27)] })).toThrow("time of a reading 0 s is outside 3600");
    expect(() => trial({ readings: [volume(0, 30, 0), volume(60, 27)] })).toThrow("uncertainty of a volume 0 L");
  });
});
