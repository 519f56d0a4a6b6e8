import { describe, expect, it } from "vitest";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { entryText, entryUnit, readEntry } from "@/lib/ui/order/entry";

const METRIC = DEFAULT_PREFERENCES;
const US = { ...DEFAULT_PREFERENCES, units: "us" } as const;

describe("readEntry", () => {
  it.each([
    ["12,4", "kg", 12_400],
    ["0.001", "kg", 1],
    ["4.35", "kg", 4350],
    ["300 g", "kg", 300],
    ["25", "g", 25],
    ["25", "pcs", 25],
    ["25 mL", "mL", 25],
    ["0", "kg", 0],
    // 10 × 453.59237 + 2 × 28.349523125 (NIST SP 811) is 4592.623 g.
    ["10 lb 2 oz", "kg", 4593],
  ] as const)("reads “%s”, typed in %s, as %d", (text, measure, amount) => {
    expect(readEntry({ label: "Amount", measure, text }, METRIC)).toEqual({ amount });
  });

  it.each([
    ["10", "kg", 4536],
    ["2", "g", 57],
    ["1 kg", "kg", 1000],
    ["3", "pcs", 3],
  ] as const)("reads “%s”, typed in %s by who has US units, as %d", (text, measure, amount) => {
    expect(readEntry({ label: "Amount", measure, text }, US)).toEqual({ amount });
  });

  it.each([
    ["", "kg", "Amount is empty; write an amount in kg"],
    ["a lot", "kg", "Amount “a lot” is not a number in kg"],
    ["-3", "pcs", "Amount “-3” is not a number in pcs"],
    ["2.5", "g", "Amount “2.5” is finer than can be weighed out; it takes whole grams"],
    ["0.0005", "kg", "Amount “0.0005” is finer than can be weighed out; it takes whole grams"],
    ["0.001 oz", "g", "Amount “0.001 oz” is finer than can be weighed out; it takes one gram at least"],
    ["2.5", "pcs", "Amount “2.5” is finer than can be weighed out; it takes whole numbers"],
    ["6000", "kg", "Amount 6000.00 kg is outside 0.00 kg to 5000.00 kg"],
    ["6000000", "pcs", "Amount 6000000 pcs is outside 0 to 5000000 pcs"],
    ["3 L", "kg", "Amount has the unit “L”; it takes g, kg, oz, lb"],
  ] as const)("refuses “%s”, typed in %s: %s", (text, measure, refusal) => {
    expect(readEntry({ label: "Amount", measure, text }, METRIC)).toEqual({ refusal });
  });
});

describe("entryText", () => {
  it("writes every whole gram so that it is read back as the same, in both systems", () => {
    for (const preferences of [METRIC, US]) {
      for (const measure of ["kg", "g"] as const) {
        for (const amount of [0, 1, 2, 27, 28, 29, 453, 454, 999, 4593, 12_400, 24_999, 4_999_999]) {
          const text = entryText(measure, amount, preferences);
          expect(readEntry({ label: "Amount", measure, text }, preferences), text).toEqual({ amount });
        }
      }
    }
  });

  it("has the unit of who types it", () => {
    expect(entryUnit("kg", US)).toBe("lb");
    expect(entryUnit("g", US)).toBe("oz");
    expect(entryUnit("kg", METRIC)).toBe("kg");
    expect(entryUnit("pcs", US)).toBe("pcs");
  });
});
