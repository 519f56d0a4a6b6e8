import { describe, expect, it } from "vitest";
import { litresFromUsGallons, usGallons } from "@/lib/calc/units";
import { NO_CHOICE } from "@/lib/model/adaptation";
import { csvText } from "@/lib/model/csv";
import { DEFAULT_PREFERENCES, type Preferences } from "@/lib/model/preferences";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { csvHeading, csvRow } from "@/lib/ui/kettles/csv-table";
import { wholeRow, type KettleFigures } from "@/lib/ui/kettles/kettle-figures";
import { entryOf, roomyKettle, smallKettle, tableContent } from "../../support/kettle-table";

function figuresOn(equipment: typeof roomyKettle): KettleFigures {
  const written = recipeIntention(tableContent);
  if (written === null) throw new Error("the sample recipe does not brew");
  return wholeRow({ content: tableContent, written, kettle: { id: "k", equipment, lots: [] }, choice: NO_CHOICE });
}

const US: Preferences = { ...DEFAULT_PREFERENCES, units: "us" };

function cellOf(column: string, preferences: Preferences, figures = figuresOn(roomyKettle)) {
  const at = csvHeading(preferences).indexOf(column);
  if (at === -1) throw new Error(`no column ${column}`);
  return csvRow({ entry: entryOf("k"), figures }, preferences)[at];
}

describe("the table of all kettles as CSV", () => {
  it("names every unit, and gives the ends of the interval of what is predicted their own columns", () => {
    const heading = csvHeading(DEFAULT_PREFERENCES);
    expect(heading).toEqual(expect.arrayContaining(["Volume (L)", "Grist (kg)", "Hops (g)", "Efficiency (%)"]));
    expect(heading).toContain("Energy, 80 % interval from (kWh)");
    expect(heading).toContain("Energy, 80 % interval to (kWh)");
    expect(heading.filter((name) => name.startsWith("Grist"))).toEqual(["Grist (kg)"]);
    expect(new Set(heading).size).toBe(heading.length);
  });

  it("gives the numbers of the row in the reader's units", () => {
    const figures = figuresOn(roomyKettle);
    expect(cellOf("Volume (L)", DEFAULT_PREFERENCES)).toBeCloseTo(roomyKettle.usualBatch, 4);
    const gallons = usGallons(Number(cellOf("Volume (gal)", US)));
    expect(litresFromUsGallons(gallons)).toBeCloseTo(roomyKettle.usualBatch, 3);
    const { low80, high80 } = figures.intervals?.["day.energy"] ?? { low80: NaN, high80: NaN };
    expect(cellOf("Energy, 80 % interval from (kWh)", DEFAULT_PREFERENCES)).toBeCloseTo(low80, 4);
    expect(cellOf("Energy, 80 % interval to (kWh)", DEFAULT_PREFERENCES)).toBeCloseTo(high80, 4);
    expect(cellOf("Fits", DEFAULT_PREFERENCES)).toBe("yes");
  });

  it("says why it does not fit, and that a member described no kettle", () => {
    const small = figuresOn(smallKettle);
    expect(cellOf("Fits", DEFAULT_PREFERENCES, small)).toBe("no");
    expect(cellOf("Limits that it breaks", DEFAULT_PREFERENCES, small)).toMatch(/Dry grain.*at most 4\.00 kg/);
    const without = csvRow({ entry: entryOf("m", { kettleName: null, ownerName: "Bo" }), figures: null }, US);
    expect(without).toEqual(["no kettle described yet", "Bo"]);
  });

  it("runs no formula of a kettle's name in a spreadsheet", () => {
    const entry = entryOf("k", { kettleName: '=HYPERLINK("x")' });
    expect(csvText([csvRow({ entry, figures: null }, US)])).toBe(`"'=HYPERLINK(""x"")",Ada\r\n`);
  });
});
