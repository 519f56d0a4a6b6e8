import { describe, expect, it } from "vitest";
import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { parseAmount } from "@/lib/ui/parse-amount";

const METRIC: Preferences = { units: "metric", gravity: "plato", colour: "ebc", theme: "auto" };
const US: Preferences = { units: "us", gravity: "sg", colour: "srm", theme: "auto" };

function parse(text: string, dimension: Dimension, preferences = METRIC): ReturnType<typeof parseAmount> {
  return parseAmount({ text, label: "Amount", dimension, preferences });
}

/** Definitions: 1 lb = 0.45359237 kg, 1 US gal = 3.785411784 L (NIST SP 811, appendix B.8); °C = (°F − 32) / 1.8. */
const READ: readonly (readonly [text: string, dimension: Dimension, library: number])[] = [
  ["4.5 kg", "mass", 4.5],
  ["4,5kg", "mass", 4.5],
  ["10 lb 2 oz", "mass", 10.125 * 0.45359237],
  ["250 g", "mass", 0.25],
  ["1 oz", "grams", 453.59237 / 16],
  ["68F", "temperature", 20],
  ["−5 °C", "temperature", -5],
  ["12,5 °P", "extract", 12.5],
  ["5 gal", "volume", 5 * 3.785411784],
  ["1 1/2 gal", "volume", 1.5 * 3.785411784],
  ["1/2 L", "volume", 0.5],
  ["½ oz", "grams", 453.59237 / 32],
  ["1½ gal", "volume", 1.5 * 3.785411784],
  ["1⁄2 oz", "grams", 453.59237 / 32],
  ["500 mL", "volume", 0.5],
  ["1 h 30 min", "minutes", 90],
  ["3.5 kW", "power", 3500],
  ["72 %", "fraction", 0.72],
  ["7", "mass", 7],
];

describe("parseAmount", () => {
  it.each(READ)("reads “%s” as %s", (text, dimension, library) => {
    const parsed = parse(text, dimension);
    expect(parsed.ok && parsed.value).toBeCloseTo(library, 9);
  });

  it("takes a number alone in the unit in which the person reads", () => {
    const parsed = parse("10", "mass", US);
    expect(parsed.ok && parsed.value).toBeCloseTo(4.5359237, 9);
  });

  // NBS Circular C440 (1942), table 113: 12 °P is 1.0484.
  it("reads a gravity for somebody who reads gravities", () => {
    const parsed = parse("1.0484", "extract", US);
    expect(parsed.ok && parsed.value).toBeCloseTo(12, 1);
  });

  it.each([
    ["", "Amount is empty; write a number in kg"],
    ["plenty", "Amount “plenty” is not a number in kg"],
    ["1/0 kg", "Amount “1/0 kg” is not a number in kg"],
    ["1.2.3", "Amount “1.2.3” is not a number in kg"],
    ["10 lb 2", "Amount “10 lb 2” is not a number in kg"],
    ["NaN", "Amount “NaN” is not a number in kg"],
    ["5 L", "Amount has the unit “L”; it takes g, kg, oz, lb"],
  ])("says what is wrong with “%s”", (text, message) => {
    expect(parse(text, "mass")).toEqual({ ok: false, message });
  });

  it("refuses a gravity written without its point", () => {
    expect(parse("1048", "extract", US)).toMatchObject({
      ok: false,
      message: expect.stringContaining("1048 SG") as string,
    });
  });

  it("tells the limits in the unit of the person", () => {
    const typed = { text: "200", label: "Mash", dimension: "temperature", range: { min: 20, max: 80 } } as const;
    expect(parseAmount({ ...typed, preferences: METRIC })).toEqual({
      ok: false,
      message: "Mash 200.0 °C is outside 20.0 °C to 80.0 °C",
    });
    expect(parseAmount({ ...typed, preferences: US })).toEqual({
      ok: false,
      message: "Mash 200 °F is outside 68 °F to 176 °F",
    });
  });
});
