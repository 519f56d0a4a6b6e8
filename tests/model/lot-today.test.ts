import { describe, expect, it } from "vitest";
import { explainFunction } from "@/lib/calc/explain";
import { billionCells, celsius, fraction } from "@/lib/calc/units";
import { genericLoss } from "@/lib/model/generic-ingredients";
import { agedPack, hopStorage, lotToday } from "@/lib/model/lot-today";

const HOP = {
  alpha: fraction(0.1),
  analysedOn: "2026-01-01",
  storedAt: celsius(20),
  packaging: "loose",
} as const;

describe("a lot of hops", () => {
  // By the definition of the loss: 180 days at 20 °C in the open lose it once.
  it("has lost what its variety loses in six months after 180 days at 20 °C in the open", () => {
    const today = lotToday({ kind: "hop", figures: HOP }, fraction(0.3), "2026-06-30");
    expect(today).toEqual({ kind: "hop", figures: { alpha: expect.closeTo(0.07, 12) as number } });
  });

  it("loses half as fast in the exponent under vacuum: √0.7 of it is left", () => {
    const figures = { ...HOP, packaging: "vacuum or inert gas" } as const;
    const today = lotToday({ kind: "hop", figures }, fraction(0.3), "2026-06-30");
    expect(today.kind === "hop" ? today.figures.alpha : null).toBeCloseTo(0.1 * Math.sqrt(0.7), 12);
  });

  it("is as analysed on the day of the analysis", () => {
    expect(lotToday({ kind: "hop", figures: HOP }, fraction(0.3), HOP.analysedOn)).toEqual({
      kind: "hop",
      figures: { alpha: 0.1 },
    });
  });

  it.each([
    ["no analysis", { alpha: null }],
    ["no day", { analysedOn: null }],
    ["no store", { storedAt: null }],
    ["no packaging", { packaging: null }],
  ])("is as analysed where its storage is not known: %s", (_what, gap) => {
    const figures = { ...HOP, ...gap };
    expect(hopStorage(figures, fraction(0.3), "2026-06-30")).toBeNull();
    expect(lotToday({ kind: "hop", figures }, fraction(0.3), "2026-06-30")).toEqual({
      kind: "hop",
      figures: { alpha: figures.alpha },
    });
  });

  it("is not reckoned back before its analysis, nor for a variety whose loss nobody knows", () => {
    expect(hopStorage(HOP, fraction(0.3), "2025-12-31")).toBeNull();
    expect(hopStorage(HOP, null, "2026-06-30")).toBeNull();
  });

  it("finds its variety in whatever letters it is written", () => {
    expect(genericLoss("  cAsCaDe ")).toBe(0.5);
    expect(genericLoss("East  Kent Golding")).toBe(0.3);
    expect(genericLoss("Nobody's hop")).toBeNull();
  });
});

describe("a lot of malt", () => {
  it("is what its analysis says, whenever", () => {
    const figures = { extract: fraction(0.8), moisture: null, colour: null };
    expect(lotToday({ kind: "fermentable", figures }, null, "2026-06-30")).toEqual({ kind: "fermentable", figures });
  });
});

describe("a lot of yeast", () => {
  const liquid = { form: "liquid", cells: billionCells(100), packedOn: "2026-01-01", storedAt: celsius(4) } as const;

  it("is as old as the days since it was packed", () => {
    expect(agedPack(liquid, "2026-01-31")).toEqual({ cells: 100, ageDays: 30, form: "liquid", celsius: 4 });
  });

  it("is explained at every age and store at which it is counted, dry and liquid", () => {
    const dry = { ...liquid, form: "dry", storedAt: celsius(25) } as const;
    for (const figures of [liquid, dry, { ...liquid, storedAt: celsius(8) }]) {
      const pack = agedPack(figures, "2026-01-31");
      const found = explainFunction({ id: "fermentation/cellsInPack", args: [pack] });
      expect(found.ok && found.explained.inputs.map(({ value }) => value)).toEqual([100, 30, figures.storedAt]);
    }
  });

  it("has no count where it stood warm, nor before it was packed, nor when too little is known", () => {
    expect(agedPack({ ...liquid, storedAt: celsius(20) }, "2026-01-31")).toBeNull();
    expect(agedPack(liquid, "2025-12-31")).toBeNull();
    expect(agedPack({ ...liquid, packedOn: null }, "2026-01-31")).toBeNull();
  });

  // 22.5 % lost in 30 days.
  it("has 77.5 of 100 living cells after 30 days in a fridge, and those of its packing where its age is not known", () => {
    const cellsOf = (figures: typeof liquid | (Omit<typeof liquid, "packedOn"> & { readonly packedOn: null })) => {
      const lot = lotToday({ kind: "yeast", figures }, null, "2026-01-31");
      return lot.kind === "yeast" ? lot.figures.cells : null;
    };
    expect(cellsOf(liquid)).toBeCloseTo(77.5, 9);
    expect(cellsOf({ ...liquid, packedOn: null })).toBe(100);
  });
});
