import { describe, expect, it } from "vitest";
import { mashThicknessLimit, mashVolume } from "@/lib/calc/mash";
import { kilograms, litres, litresPerKilogram } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const limits = (grist: number, capacity: number, thickest: number): ReturnType<typeof mashThicknessLimit> =>
  mashThicknessLimit({
    grist: kilograms(grist),
    capacity: litres(capacity),
    thickest: litresPerKilogram(thickest),
  });

describe("mashThicknessLimit", () => {
  it("leaves 11 to 16.65 L for 5 kg in 20 L: 5 × 2.2, and 20 − 0.67 × 5 (by hand)", () => {
    const found = limits(5, 20, 2.2);
    if (!found.ok) throw new Error(found.reason);
    expectWithin(found.leastWater, 11, 1e-9);
    expectWithin(found.mostWater, 16.65, 1e-9);
    expect(found.thickest).toBe(2.2);
    expectWithin(found.thinnest, 3.33, 1e-9);
    expectWithin(mashVolume({ water: found.mostWater, grist: kilograms(5) }), 20, 1e-9);
  });

  it("takes 20 / 2.87 = 6.969 kg at most there, and says so of more (by hand)", () => {
    const found = limits(7, 20, 2.2);
    expect(found).toMatchObject({ ok: false, reason: "mash-over-the-rim" });
    expectWithin(found.ok ? NaN : found.mostGrist, 6.9686, 1e-4);
    expect(limits(6.968, 20, 2.2).ok).toBe(true);
    expect(limits(6.97, 20, 2.2).ok).toBe(false);
  });

  it("ends at 20 L/kg, the thinnest that counts as a mash", () => {
    expect(limits(1, 90, 2.2)).toMatchObject({ ok: true, thinnest: 20, mostWater: 20 });
  });

  it("has no room for grain without a kettle", () => {
    expect(limits(1, 0, 2.2)).toEqual({ ok: false, reason: "mash-over-the-rim", mostGrist: 0 });
  });

  it("refuses no grist and no kettle that could be", () => {
    const wrong = (changes: object) => () =>
      mashThicknessLimit({
        ...{ grist: kilograms(5), capacity: litres(20), thickest: litresPerKilogram(2) },
        ...changes,
      });
    expect(wrong({ grist: 0 })).toThrow("grist 0 kg is outside 0.001 to 100000 kg");
    expect(wrong({ grist: NaN })).toThrow("grist NaN kg is outside");
    expect(wrong({ capacity: -1 })).toThrow("mash capacity -1 L is outside 0 to 100000 L");
    expect(wrong({ thickest: 21 })).toThrow("thickest mash 21 L/kg is outside 0 to 20 L/kg");
  });
});
