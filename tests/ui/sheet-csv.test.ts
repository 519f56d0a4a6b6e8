import { describe, expect, it } from "vitest";
import { brew, intervals } from "@/lib/calc/ledger";
import { csvText } from "@/lib/model/csv";
import { equipmentInput } from "@/lib/model/equipment";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { recipeContent } from "@/lib/model/recipe-content";
import { sheetCsv } from "@/lib/ui/sheet/sheet-csv";
import { sampleContent, sampleEquipment } from "../support/sample-recipe";

const content = recipeContent.parse(sampleContent());
const equipment = equipmentInput.parse(sampleEquipment());
const { recipe, writtenOn } = content;

function sheetOf(a: { readonly units: "metric" | "us"; readonly lots?: ReadonlyMap<string, string> }) {
  const outcome = brew({ recipe, equipment, ambient: writtenOn.ambient });
  if (!outcome.ok) throw new Error("the sample recipe does not brew");
  const known = intervals({ recipe, equipment, ambient: writtenOn.ambient });
  const about = [["Recipe", "=HYPERLINK(1)"]] as const;
  const sheet = { about, recipe, ledger: outcome.ledger, intervals: known, lots: a.lots ?? new Map<string, string>() };
  return sheetCsv(sheet, { ...DEFAULT_PREFERENCES, units: a.units });
}

describe("a sheet as CSV", () => {
  const rowOf = (rows: ReturnType<typeof sheetOf>, what: string) => rows.find((row) => row[1] === what);

  it("has what goes in, each with its lot", () => {
    const lots = new Map([
      ["fermentables.0", "Sack 7"],
      ["salts.gypsum", "Jar"],
      ["yeast", "Packs"],
      ["acid", "Bottle"],
    ]);
    const rows = sheetOf({ units: "metric", lots });
    const malt = recipe.fermentables[0];
    expect(rowOf(rows, malt?.name ?? "")).toEqual([
      "Goes in",
      malt?.name,
      "mash",
      malt?.kg,
      "kg",
      null,
      null,
      "Sack 7",
    ]);
    expect(rowOf(rows, "Gypsum")?.slice(3)).toEqual([4, "g", null, null, "Jar"]);
    expect(rowOf(rows, "Ale yeast")?.slice(4)).toEqual(["10⁹", null, null, "Packs"]);
    expect(rows.find((row) => row[4] === "mL")?.slice(3)).toEqual([4, "mL", null, null, "Bottle"]);
  });

  it("says between what ends a prediction lies", () => {
    const [, , , value, unit, low, high] = rowOf(sheetOf({ units: "metric" }), "Into the fermenter") ?? [];
    expect(unit).toBe("L");
    expect(Number(low)).toBeLessThan(Number(value));
    expect(Number(high)).toBeGreaterThan(Number(value));
  });

  it("has the units of its reader: 1 lb is 0.45359237 kg", () => {
    const kg = recipe.fermentables[0]?.kg ?? NaN;
    const [, , , value, unit] = rowOf(sheetOf({ units: "us" }), recipe.fermentables[0]?.name ?? "") ?? [];
    expect(unit).toBe("lb");
    expect(Number(value)).toBeCloseTo(kg / 0.45359237, 3);
  });

  it("is run by no spreadsheet", () => {
    expect(csvText(sheetOf({ units: "metric" }))).toContain("Sheet,Recipe,'=HYPERLINK(1)");
  });
});
