import { scoreSheetTotal, SHEET_MAXIMA } from "@/lib/calc/judging";
import type { DescriptorId } from "./descriptors";

/** The parts of a sheet, in the order in which a beer is judged. */
export const SHEET_PARTS = ["aroma", "appearance", "flavour", "mouthfeel", "overall"] as const;
export type SheetPart = (typeof SHEET_PARTS)[number];

export const SHEET_PART_NAMES: Readonly<Record<SheetPart, string>> = {
  aroma: "Aroma",
  appearance: "Appearance",
  flavour: "Flavour",
  mouthfeel: "Mouthfeel",
  overall: "Overall impression",
};

/** The smallest step in which points are given. */
export const POINTS_STEP = 0.5;

export const LONGEST_PART_NOTE = 800;

/** How much of it there is: slight, clear, strong. */
export const STRENGTHS = [1, 2, 3] as const;
export type Strength = (typeof STRENGTHS)[number];

export const STRENGTH_NAMES: Readonly<Record<Strength, string>> = { 1: "slight", 2: "clear", 3: "strong" };

export interface NotedDescriptor {
  readonly word: DescriptorId;
  readonly strength: Strength;
}

/** What a judge writes of one beer: points and notes for each part, and what he or she found in it. */
export interface Sheet {
  /** null where no points are given yet. */
  readonly scores: Readonly<Record<SheetPart, number | null>>;
  readonly notes: Readonly<Record<SheetPart, string>>;
  readonly descriptors: readonly NotedDescriptor[];
}

/** What a judge answers in a triangle or duo-trio: the odd glass, or the one that is like the reference. */
export interface Choice {
  readonly glassNo: number;
  readonly note: string;
}

/** An empty sheet. */
export const BLANK_SHEET: Sheet = {
  scores: { aroma: null, appearance: null, flavour: null, mouthfeel: null, overall: null },
  notes: { aroma: "", appearance: "", flavour: "", mouthfeel: "", overall: "" },
  descriptors: [],
};

/** The points of a sheet together; null while a part is missing. */
export function sheetTotal({ scores }: Pick<Sheet, "scores">): number | null {
  const { aroma, appearance, flavour, mouthfeel, overall } = scores;
  if (aroma === null || appearance === null || flavour === null || mouthfeel === null || overall === null) return null;
  return scoreSheetTotal({ aroma, appearance, flavour, mouthfeel, overall });
}

/** The points given so far: parts that are missing count as none. */
export function pointsSoFar({ scores }: Pick<Sheet, "scores">): number {
  return scoreSheetTotal({
    aroma: scores.aroma ?? 0,
    appearance: scores.appearance ?? 0,
    flavour: scores.flavour ?? 0,
    mouthfeel: scores.mouthfeel ?? 0,
    overall: scores.overall ?? 0,
  });
}

/** The parts that have no points yet. */
export function missingParts({ scores }: Pick<Sheet, "scores">): readonly SheetPart[] {
  return SHEET_PARTS.filter((part) => scores[part] === null);
}

export const partMaximum = (part: SheetPart): number => SHEET_MAXIMA[part];
