import { describe, expect, it } from "vitest";
import { scoreSheetTotal, SHEET_MAXIMA, type ScoreSheet } from "@/lib/calc/judging";

describe("scoreSheetTotal", () => {
  it("is 50 for a beer beyond improvement (beer score sheet of 50 points)", () => {
    expect(scoreSheetTotal({ aroma: 12, appearance: 3, flavour: 20, mouthfeel: 5, overall: 10 })).toBe(50);
  });

  it("adds up the five parts and gives nothing for nothing", () => {
    expect(scoreSheetTotal({ aroma: 9, appearance: 3, flavour: 15, mouthfeel: 4, overall: 7 })).toBe(38);
    expect(scoreSheetTotal({ aroma: 1, appearance: 0, flavour: 0, mouthfeel: 0, overall: 0 })).toBe(1);
    expect(scoreSheetTotal({ aroma: 0, appearance: 2, flavour: 3.5, mouthfeel: 0, overall: 0 })).toBe(5.5);
    expect(scoreSheetTotal({ aroma: 0, appearance: 0, flavour: 0, mouthfeel: 4, overall: 8 })).toBe(12);
  });

  it.each([
    { part: "aroma", most: 12 },
    { part: "appearance", most: 3 },
    { part: "flavour", most: 20 },
    { part: "mouthfeel", most: 5 },
    { part: "overall", most: 10 },
  ] as const)("refuses more than $most points for $part, less than none and no number", ({ part, most }) => {
    const sheet: ScoreSheet = { aroma: 5, appearance: 1, flavour: 5, mouthfeel: 1, overall: 5 };
    expect(SHEET_MAXIMA[part]).toBe(most);
    expect(() => scoreSheetTotal({ ...sheet, [part]: most + 0.5 })).toThrow(
      `points for ${part} ${most + 0.5} is outside 0 to ${most}`,
    );
    expect(() => scoreSheetTotal({ ...sheet, [part]: -1 })).toThrow(`points for ${part} -1 is outside 0 to ${most}`);
    expect(() => scoreSheetTotal({ ...sheet, [part]: Number.NaN })).toThrow(`points for ${part} NaN`);
  });
});
