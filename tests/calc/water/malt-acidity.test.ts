import { describe, expect, it } from "vitest";
import { ebc, kilograms, ph } from "@/lib/calc/units";
import { MALT_KINDS, maltAcidity, maltKindFromColour, mashPh, type MaltKind } from "@/lib/calc/water";
import { NO_REACTION, liquorOf } from "../../support/mash-of";

const DROP = liquorOf(0.001, {}, { ph: 7 });
const acidity = (kind: MaltKind, colour: number): ReturnType<typeof maltAcidity> =>
  maltAcidity({ kind, colour: ebc(colour) });

describe("maltAcidity", () => {
  // Spans of distilled-water pH and of buffering, mEq/(kg·pH): common practice, no source.
  it.each([
    { kind: "base", colours: [2, 3, 6, 8, 12], low: 5.55, high: 5.8, least: 30, most: 45 },
    { kind: "munich", colours: [9, 15, 25, 40], low: 5.3, high: 5.55, least: 30, most: 45 },
    { kind: "wheat", colours: [2, 4, 6], low: 5.9, high: 6.05, least: 30, most: 45 },
    { kind: "caramel", colours: [3, 25, 100, 250, 400, 500], low: 4.5, high: 5.3, least: 45, most: 60 },
    { kind: "roasted", colours: [300, 500, 900, 1400, 4000], low: 4.5, high: 4.75, least: 38, most: 50 },
  ] as const)("puts $kind malt between pH $low and $high with $least to $most", ({ kind, colours, ...span }) => {
    let before = Infinity;
    for (const colour of colours) {
      const { distilledWaterPh, buffering, lacticFraction } = acidity(kind, colour);
      expect(distilledWaterPh).toBeGreaterThanOrEqual(span.low);
      expect(distilledWaterPh).toBeLessThanOrEqual(span.high);
      // Darker malts of a kind are more acid: common practice.
      expect(distilledWaterPh).toBeLessThanOrEqual(before);
      before = distilledWaterPh;
      expect(buffering).toBeGreaterThanOrEqual(span.least);
      expect(buffering).toBeLessThanOrEqual(span.most);
      expect(lacticFraction).toBe(0);
    }
  });

  it("lets the pH of a caramel malt fall with its colour and its buffering rise", () => {
    expect(acidity("caramel", 300).distilledWaterPh).toBeLessThan(acidity("caramel", 50).distilledWaterPh - 0.2);
    expect(acidity("caramel", 300).buffering).toBeGreaterThan(acidity("caramel", 50).buffering + 5);
    expect(acidity("kilned", 160).distilledWaterPh).toBeLessThan(acidity("kilned", 50).distilledWaterPh - 0.2);
    expect(acidity("wheat", 17).distilledWaterPh).toBeLessThan(acidity("wheat", 4).distilledWaterPh - 0.2);
  });

  it("puts acidulated malt at pH 3.4 to 3.7 in distilled water, 2 % of it lactic acid (common practice, no source)", () => {
    const malt = { kg: kilograms(1), ...acidity("acidulated", 4) };
    expect(malt.lacticFraction).toBe(0.02);
    const found = mashPh({ water: DROP, grist: [malt], hardnessReaction: NO_REACTION, acids: [] });
    expect(found.ok ? found.ph : NaN).toBeGreaterThan(3.4);
    expect(found.ok ? found.ph : NaN).toBeLessThan(3.7);
  });

  it("lets sugar buffer nothing and says what it does not know", () => {
    expect(acidity("sugar", 0)).toEqual({
      distilledWaterPh: 7,
      buffering: 0,
      lacticFraction: 0,
      phDeviation: 0,
      bufferingDeviation: 0,
    });
    for (const kind of MALT_KINDS.filter((other) => other !== "sugar")) {
      expect(acidity(kind, 10).phDeviation, kind).toBeGreaterThan(0.05);
      expect(acidity(kind, 10).phDeviation, kind).toBeLessThan(0.25);
      expect(acidity(kind, 10).bufferingDeviation, kind).toBe(0.15);
      expect(acidity(kind, 10).distilledWaterPh, kind).toBeLessThanOrEqual(ph(6.1));
    }
  });

  it("refuses colours beyond any malt", () => {
    const off = JSON.parse("4001") as ReturnType<typeof ebc>;
    expect(() => maltAcidity({ kind: "base", colour: off })).toThrow("malt colour 4001 EBC is outside 0 to 4000 EBC");
  });
});

describe("maltKindFromColour", () => {
  it.each([
    { kind: "malt", colour: 3, is: "base", couldBe: ["wheat", "caramel", "acidulated"] },
    { kind: "malt", colour: 8.9, is: "base", couldBe: ["wheat", "caramel", "acidulated"] },
    { kind: "malt", colour: 9, is: "munich", couldBe: ["caramel", "wheat"] },
    { kind: "malt", colour: 34.9, is: "munich", couldBe: ["caramel", "wheat"] },
    { kind: "malt", colour: 35, is: "caramel", couldBe: ["kilned"] },
    { kind: "malt", colour: 449, is: "caramel", couldBe: ["kilned"] },
    { kind: "malt", colour: 450, is: "roasted", couldBe: ["caramel"] },
    { kind: "adjunct", colour: 3, is: "raw grain", couldBe: [] },
    { kind: "adjunct", colour: 1300, is: "roasted", couldBe: ["caramel"] },
    { kind: "sugar", colour: 1300, is: "sugar", couldBe: [] },
    { kind: "malt extract", colour: 80, is: "malt extract", couldBe: [] },
  ] as const)("takes $kind of $colour EBC for $is (common practice, no source)", ({ kind, colour, is, couldBe }) => {
    expect(maltKindFromColour({ kind, colour: ebc(colour) })).toEqual({ kind: is, couldBe });
  });

  it("refuses colours beyond any malt", () => {
    const off = JSON.parse("-1") as ReturnType<typeof ebc>;
    expect(() => maltKindFromColour({ kind: "sugar", colour: off })).toThrow("malt colour -1 EBC is outside 0 to 4000");
  });
});
