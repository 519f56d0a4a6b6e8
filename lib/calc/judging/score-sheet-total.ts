import { requireInRange } from "../errors";

/** Most points of each part of the sheet; together 50. */
export const SHEET_MAXIMA = { aroma: 12, appearance: 3, flavour: 20, mouthfeel: 5, overall: 10 } as const;

/** Points that a judge gave to each part of a beer. */
export type ScoreSheet = Readonly<Record<keyof typeof SHEET_MAXIMA, number>>;

/**
 * Adds up a judge's sheet of 50 points.
 *
 * @param sheet - Points for aroma, appearance, flavour, mouthfeel and overall impression.
 * @returns Points, 0 to 50.
 * @validRange 0 to 12, 3, 20, 5 and 10 points.
 * @throws {@link OutOfRangeError} when a part is outside its range.
 * @source Beer score sheet of 50 points (docs/sources.md#bjcp-score-sheet)
 * @example
 * scoreSheetTotal({ aroma: 9, appearance: 3, flavour: 15, mouthfeel: 4, overall: 7 }); // 38
 */
export function scoreSheetTotal({ aroma, appearance, flavour, mouthfeel, overall }: ScoreSheet): number {
  return (
    points("aroma", aroma) +
    points("appearance", appearance) +
    points("flavour", flavour) +
    points("mouthfeel", mouthfeel) +
    points("overall", overall)
  );
}

function points(part: keyof ScoreSheet, given: number): number {
  return requireInRange(`points for ${part}`, given, { unit: "", min: 0, max: SHEET_MAXIMA[part] });
}
