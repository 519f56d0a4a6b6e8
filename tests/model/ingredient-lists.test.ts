import { describe, expect, it } from "vitest";
import { HOP_VARIETIES } from "@/lib/model/hop-varieties";
import { TYPICAL_FERMENTABLES } from "@/lib/model/ingredients";
import { maltFacts } from "@/lib/model/malt-groups";
import { YEAST_CLASSES } from "@/lib/model/yeast-classes";
import { FERMENTABLES, HOPS, YEASTS } from "../reference/ingredients";

const DIGITS = 9;
const KIND: Readonly<Record<string, string>> = { extract: "malt extract" };

describe("the list of fermentables", () => {
  it("has the same names in the same order as the collected one", () => {
    expect(TYPICAL_FERMENTABLES.map(({ name }) => name)).toEqual(FERMENTABLES.map(([, name]) => name));
  });

  it.each(FERMENTABLES.map((row) => [row[1] ?? "", row] as const))("%s has the collected figures", (name, row) => {
    const [kind = "", , group, extract, moisture, ebc, ph, buffering, lintner, fermentability = ""] = row;
    const entry = TYPICAL_FERMENTABLES.find((each) => each.name === name);
    expect(entry?.kind).toBe(KIND[kind] ?? kind);
    expect(entry?.extract).toBeCloseTo(Number(extract) / 100, DIGITS);
    expect(entry?.moisture).toBeCloseTo(Number(moisture) / 100, DIGITS);
    // The linear conversion goes below nothing for the palest grits, and there is no such colour.
    expect(entry?.colour).toBeCloseTo(Math.max(0, Number(ebc)), DIGITS);
    if (fermentability !== "") expect(entry?.fermentability).toBeCloseTo(Number(fermentability) / 100, DIGITS);
    if (entry?.station === "kettle") return;
    expect(maltFacts(name)).toEqual({ group, lintner: Number(lintner) });
    if (group === "acid") return;
    expect(entry?.acidity?.distilledWaterPh).toBeCloseTo(Number(ph), DIGITS);
    expect(entry?.acidity?.buffering).toBeCloseTo(Number(buffering), DIGITS);
  });

  it("counts the acid of acidulated malt as acid: 2 % of lactic acid on a pale malt, not one buffer of pH 3.45", () => {
    const acidulated = TYPICAL_FERMENTABLES.find(({ name }) => name === "Acidulated malt");
    expect(acidulated?.acidity).toEqual({ distilledWaterPh: 5.7, buffering: 38, lacticFraction: 0.02 });
    // 20 g/kg ÷ 90.08 g/mol = 222 mEq/kg, as collected.
    expect((1000 * (acidulated?.acidity?.lacticFraction ?? 0)) / 90.08).toBeCloseTo(0.222, 3);
  });
});

describe("the list of hops", () => {
  it("has the same names in the same order as the collected one", () => {
    expect(HOP_VARIETIES.map(({ name }) => name)).toEqual(HOPS.map(([name]) => name));
  });

  it.each(HOPS.map((row) => [row[0] ?? "", row] as const))("%s has the collected figures", (name, row) => {
    const [, purpose, ...rest] = row;
    const hop = HOP_VARIETIES.find((each) => each.name === name);
    expect(hop?.purpose).toBe(purpose);
    expect(hop?.keeping).toBe(rest.at(-1));
    const figures = rest.slice(0, -1).map(Number);
    const listed = [
      ...[hop?.alphaLow, hop?.alphaHigh, hop?.beta.low, hop?.beta.high, hop?.cohumulone.low, hop?.cohumulone.high].map(
        (part) => (part ?? NaN) * 100,
      ),
      hop?.oilMlPer100G.low ?? NaN,
      hop?.oilMlPer100G.high ?? NaN,
      (hop?.lossIn6Months ?? NaN) * 100,
    ];
    expect(listed.map((figure) => figure.toFixed(DIGITS))).toEqual(figures.map((figure) => figure.toFixed(DIGITS)));
  });
});

describe("the list of yeasts", () => {
  it.each(YEASTS.map((row, i) => [row[0] ?? "", i, row] as const))("has %s with the collected figures", (_, i, row) => {
    const [, group = "", low, high, cold, warm, flocculation] = row;
    const [kind, ...marks] = group.split(" ");
    const yeast = YEAST_CLASSES[i];
    expect(yeast).toMatchObject({ group: kind, flocculation, celsiusLow: Number(cold), celsiusHigh: Number(warm) });
    expect(yeast?.attenuationLow).toBeCloseTo(Number(low) / 100, DIGITS);
    expect(yeast?.attenuationHigh).toBeCloseTo(Number(high) / 100, DIGITS);
    expect(yeast?.trait?.includes("phenolic") ?? false).toBe(marks.includes("POF+"));
    expect(yeast?.trait?.includes("diastatic") ?? false).toBe(marks.includes("STA1"));
  });

  it("has as many as were collected", () => {
    expect(YEAST_CLASSES).toHaveLength(YEASTS.length);
  });
});
