import { describe, expect, it } from "vitest";
import { fieldErrors } from "@/lib/model/field-errors";
import { findGeneric, GENERIC_INGREDIENTS } from "@/lib/model/generic-ingredients";
import { kindAndFigures, newIngredient } from "@/lib/model/ingredient";
import { newLot } from "@/lib/model/ingredient-lot";
import { majorText, minorUnits } from "@/lib/model/price";

describe("the generic ingredients", () => {
  it("have an address each, which finds them again", () => {
    const slugs = GENERIC_INGREDIENTS.map(({ slug }) => slug);
    expect(new Set(slugs).size).toBe(slugs.length);
    for (const each of GENERIC_INGREDIENTS) expect(findGeneric(each.slug)).toBe(each);
    expect(findGeneric("hop-nobodys")).toBeNull();
  });

  it("are 89 fermentables, 80 hops, 26 yeasts, 7 salts and 9 acids", () => {
    const count = (kind: string): number => GENERIC_INGREDIENTS.filter(({ what }) => what.kind === kind).length;
    expect(["fermentable", "hop", "yeast", "salt", "acid"].map(count)).toEqual([89, 80, 26, 7, 9]);
  });

  it("have figures that a club's own ingredient may have", () => {
    for (const { what } of GENERIC_INGREDIENTS) expect(kindAndFigures.parse(what)).toEqual(what);
  });
});

const HOP = { kind: "hop", figures: { alphaLow: 0.05, alphaHigh: 0.07, lossIn6Months: null } };

describe("a club's own ingredient", () => {
  it.each([
    ["a name of blanks", { name: "  " }, { name: "Name of the ingredient is empty" }],
    [
      "a span that goes down",
      { what: { ...HOP, figures: { ...HOP.figures, alphaLow: 0.08 } } },
      { "what.figures.alphaHigh": "Alpha acids, high, is below the low figure" },
    ],
    [
      "a loss of everything",
      { what: { ...HOP, figures: { ...HOP.figures, lossIn6Months: 1 } } },
      { "what.figures.lossIn6Months": "Alpha acids lost in six months at 20 °C 1 is outside 0 to 0.95" },
    ],
    ["figures of another kind", { what: { kind: "salt", figures: HOP.figures } }, null],
    ["a field that nobody asked for", { owner: "club" }, null],
  ])("is refused with %s", (_what, change, messages) => {
    const parsed = newIngredient.safeParse({ name: "Garden hop", notes: "", what: HOP, ...change });
    expect(parsed.success).toBe(false);
    if (messages !== null && parsed.error !== undefined) expect(fieldErrors(parsed.error)).toEqual(messages);
  });
});

const LOT = {
  name: "Cascade",
  label: "Harvest 2026, invented",
  what: { kind: "hop", figures: { alpha: 0.06, analysedOn: "2026-09-10", storedAt: -18, packaging: "sealed bag" } },
  bestBefore: null,
  price: null,
  notes: "",
  owner: "me",
  onHand: 250,
};

describe("a lot", () => {
  it("is taken with what is known of it, and with nothing known of it", () => {
    expect(newLot.safeParse(LOT).success).toBe(true);
    const nothing = { alpha: null, analysedOn: null, storedAt: null, packaging: null };
    expect(newLot.safeParse({ ...LOT, what: { kind: "hop", figures: nothing } }).success).toBe(true);
  });

  it.each([
    ["less than nothing on hand", { onHand: -1 }],
    ["more on hand than fits any shed", { onHand: 1_000_001 }],
    ["a 30 February", { bestBefore: "2027-02-30" }],
    ["a day without end", { bestBefore: "9999-01-01" }],
    ["a price without a currency", { price: { minor: 450, for: 100 } }],
    ["a price for nothing", { price: { minor: 450, currency: "EUR", for: 0 } }],
    ["a price of half a cent", { price: { minor: 0.5, currency: "EUR", for: 100 } }],
    ["no label", { label: "" }],
    ["alpha acids of a whole hop", { what: { ...LOT.what, figures: { ...LOT.what.figures, alpha: 1 } } }],
  ])("is refused with %s", (_what, change) => {
    expect(newLot.safeParse({ ...LOT, ...change }).success).toBe(false);
  });

  it("says how much is too much in its own unit", () => {
    const malt = { kind: "fermentable", figures: { extract: null, moisture: null, colour: null } };
    const parsed = newLot.safeParse({ ...LOT, what: malt, onHand: 100_001 });
    expect(parsed.error === undefined ? {} : fieldErrors(parsed.error)).toEqual({
      onHand: "On hand 100001 kg is outside 0 to 100000",
    });
  });
});

describe("money", () => {
  // Decimals of ISO 4217: EUR 2, JPY 0, KWD 3.
  it.each([
    ["4.50", "EUR", 450, "4.50"],
    ["4,5", "EUR", 450, "4.50"],
    ["0.05", "EUR", 5, "0.05"],
    ["12", "EUR", 1200, "12.00"],
    ["1250", "JPY", 1250, "1250"],
    ["1.234", "KWD", 1234, "1.234"],
  ])("%s %s is %d of its smallest unit, and written back", (text, currency, minor, again) => {
    expect(minorUnits(text, currency)).toBe(minor);
    expect(majorText(minor, currency)).toBe(again);
  });

  it.each([
    ["4.505", "EUR"],
    ["4.5", "JPY"],
    ["-1", "EUR"],
    ["1e3", "EUR"],
    ["", "EUR"],
    ["free", "EUR"],
    ["1 000", "EUR"],
  ])("%j %s is no amount", (text, currency) => {
    expect(minorUnits(text, currency)).toBeNull();
  });
});
