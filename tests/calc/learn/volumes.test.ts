import { describe, expect, it } from "vitest";
import { dipStickVolume } from "@/lib/calc/kettle";
import { commissionDeadSpace, dipStick, type LeftBehind, type Pour } from "@/lib/calc/learn";
import { celsius, litres } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const left = (value: number, sd = 0.05, at = 20): LeftBehind => ({ litres: litres(value), celsius: celsius(at), sd });
const pour = (value: number, reading: number): Pour => ({ litres: litres(value), sd: 0.05, reading, readingSd: 1 });

describe("commissionDeadSpace", () => {
  it("is the one volume with the uncertainty of its jug", () => {
    expect(commissionDeadSpace({ readings: [left(1.2)] })).toMatchObject({
      volume: { value: expect.closeTo(1.2, 9) as number, standardError: expect.closeTo(0.05, 9) as number },
    });
  });

  it("weighs two jugs by their variances: 1.2 ± 0.05 and 1.3 ± 0.1 are 1.22 ± 0.0447", () => {
    const found = commissionDeadSpace({ readings: [left(1.2), left(1.3, 0.1)] });
    if (!found.ok) throw new Error(found.reason);
    expectWithin(found.volume.value, (1.2 / 0.0025 + 1.3 / 0.01) / (1 / 0.0025 + 1 / 0.01), 1e-9);
    expectWithin(found.volume.standardError, Math.sqrt(1 / 500), 1e-9);
  });

  it("widens by the Birge ratio what scatters more than stated: 1.0 and 2.0 ± 0.05, χ² 200 on 1", () => {
    const found = commissionDeadSpace({ readings: [left(1), left(2)] });
    if (!found.ok) throw new Error(found.reason);
    expectWithin(found.scatter.chiSquared, 200, 1e-6);
    expectWithin(found.volume.standardError, (0.05 / Math.SQRT2) * Math.sqrt(200), 1e-9);
  });

  it("counts hot water at 20 °C: 1 L of 80 °C is 0.97353 L (971.79 / 998.21)", () => {
    const found = commissionDeadSpace({ readings: [left(1, 0.05, 80)] });
    expectWithin(found.ok ? found.volume.value : NaN, 971.79 / 998.21, 2e-5);
  });

  it("needs something to go by, and a jug that is not exact", () => {
    expect(commissionDeadSpace({ readings: [] })).toEqual({ ok: false, reason: "no-readings" });
    expect(() => commissionDeadSpace({ readings: [left(1, 0)] })).toThrow("uncertainty of a volume 0 L");
  });
});

describe("dipStick", () => {
  const POURS = [pour(5, 52), pour(5, 104), pour(10, 204)];

  it("adds up what was poured, with the variances of the jugs and of the readings", () => {
    const found = dipStick({ unit: "mm", pours: POURS });
    if (!found.ok) throw new Error(found.reason);
    const { marks } = found.table;
    expect(marks.map((mark) => [mark.reading, mark.litres])).toEqual([
      [52, 5],
      [104, 10],
      [204, 20],
    ]);
    // One, two and three jugs of 0.05 L; a millimetre is 5/52 L on the first two marks and 0.1 L on the third.
    expectWithin(marks[0]?.sd ?? NaN, Math.hypot(0.05, 5 / 52), 1e-12);
    expectWithin(marks[1]?.sd ?? NaN, Math.sqrt(2 * 0.05 ** 2 + (5 / 52) ** 2), 1e-12);
    expectWithin(marks[2]?.sd ?? NaN, Math.sqrt(3 * 0.05 ** 2 + 0.1 ** 2), 1e-12);
  });

  it("makes a table from which a volume is read: 154 mm are 15 L", () => {
    const found = dipStick({ unit: "mm", pours: POURS });
    if (!found.ok) throw new Error(found.reason);
    expect(dipStickVolume({ table: found.table, reading: 154 })).toMatchObject({ ok: true, litres: 15 });
  });

  it("refuses one mark, and names the pour that does not rise", () => {
    expect(dipStick({ unit: "mm", pours: [pour(5, 52)] })).toEqual({ ok: false, reason: "too-few-marks" });
    expect(dipStick({ unit: "mm", pours: [pour(5, 52), pour(5, 104), pour(5, 104)] })).toEqual({
      ok: false,
      reason: "does-not-rise",
      pour: 2,
    });
    expect(() => dipStick({ unit: "mm", pours: [pour(0, 52), pour(5, 60)] })).toThrow("volume poured 0 L");
  });
});
