import { describe, expect, it } from "vitest";
import { fieldErrors } from "@/lib/model/field-errors";
import { paperSheet } from "@/lib/model/tasting/sheet-paper";

const POINTS = {
  "aroma-points": "7,5",
  "appearance-points": "3",
  "flavour-points": "15.5",
  "mouthfeel-points": ",5",
  "overall-points": "0",
};

/** What a form sends: every field, the empty ones too. */
const typed = (change: Readonly<Record<string, string>> = {}): Record<string, string> => ({
  judgeId: "0190b7c4-0000-7000-8000-000000000001",
  flightNo: "1",
  entryNo: "417",
  ...POINTS,
  ...Object.fromEntries(["aroma", "appearance", "flavour", "mouthfeel", "overall"].map((part) => [`${part}-note`, ""])),
  ...change,
});

describe("paperSheet", () => {
  it("reads points with a decimal comma as with a point", () => {
    expect(paperSheet.parse(typed()).sheet.scores).toEqual({
      ...{ aroma: 7.5, appearance: 3, flavour: 15.5, mouthfeel: 0.5, overall: 0 },
    });
  });

  it.each([
    ["12,5", "Points for aroma 12.5 is outside 0 to 12"],
    ["7,3", "Points for aroma are given to the half point"],
    ["7,5,5", "Points for aroma “7,5,5” is not a number; it takes 0 to 12"],
    ["", "Points for aroma is empty; it takes a number from 0 to 12"],
  ])("refuses “%s” by field, value and range", (text, message) => {
    const read = paperSheet.safeParse(typed({ "aroma-points": text }));
    expect(read.success ? {} : fieldErrors(read.error)).toEqual({ "aroma-points": message });
  });

  it("takes a tick for a word that was clear", () => {
    expect(paperSheet.parse(typed({ "found-bitter": "on" })).sheet.descriptors).toEqual([
      { word: "bitter", strength: 2 },
    ]);
  });
});
