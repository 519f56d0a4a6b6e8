import { DESCRIPTOR_IDS, type DescriptorId } from "./descriptors";
import { byEntry } from "./results-by-entry";
import type { JudgedEntry, TastingFacts } from "./results-facts";
import type { EntryResult } from "./results-scored";
import { scoredResult } from "./results-scored";
import { SHEET_PARTS, type Sheet, type SheetPart, type Strength } from "./sheet";

/** What one judge, by seat, gave and wrote. */
export interface SeatSheet {
  readonly seat: number;
  readonly total: number;
  readonly sheet: Sheet;
}

/** A word, how many judges found it and how strong at most. */
export interface FoundWord {
  readonly word: DescriptorId;
  readonly judges: number;
  readonly strongest: Strength;
}

/** What the brewer of an entry is told. */
export interface Feedback {
  readonly flightTitle: string;
  readonly entry: JudgedEntry;
  readonly result: EntryResult;
  readonly entries: number;
  readonly means: Readonly<Record<SheetPart, number>> | null;
  readonly sheets: readonly SeatSheet[];
  readonly found: readonly FoundWord[];
}

/** The feedback of every entry of the scored flights, in the order of their numbers. */
export function feedbackOf({ flights, seed }: TastingFacts): readonly Feedback[] {
  return flights
    .filter(({ kind, entries }) => kind === "scored" && entries.length > 0)
    .flatMap((flight) => {
      const { entries } = scoredResult(flight, seed);
      const sheetsOf = byEntry(flight.sheets);
      return entries.map((result): Feedback => {
        const sheets = sheetsOf(result.entry.entryNo)
          .map(({ judgeId, total, sheet }) => ({ seat: seatOf(flight.judges, judgeId), total, sheet }))
          .sort((a, b) => a.seat - b.seat);
        return {
          ...{ flightTitle: flight.title, entry: result.entry, result, entries: entries.length, sheets },
          means: sheets.length === 0 ? null : meansOf(sheets),
          found: foundIn(sheets),
        };
      });
    })
    .sort((a, b) => a.entry.entryNo - b.entry.entryNo);
}

function seatOf(judges: TastingFacts["flights"][number]["judges"], judgeId: string): number {
  return judges.find((judge) => judge.judgeId === judgeId)?.seat ?? 0;
}

function meansOf(sheets: readonly SeatSheet[]): Readonly<Record<SheetPart, number>> {
  const mean = (part: SheetPart): number =>
    sheets.reduce((sum, { sheet }) => sum + (sheet.scores[part] ?? 0), 0) / sheets.length;
  const [aroma, appearance, flavour, mouthfeel, overall] = SHEET_PARTS.map(mean);
  return {
    aroma: aroma ?? 0,
    appearance: appearance ?? 0,
    flavour: flavour ?? 0,
    mouthfeel: mouthfeel ?? 0,
    overall: overall ?? 0,
  };
}

/** Those that most judges found first. */
function foundIn(sheets: readonly SeatSheet[]): readonly FoundWord[] {
  return DESCRIPTOR_IDS.flatMap((word): FoundWord[] => {
    const strengths = sheets.flatMap(({ sheet }) => sheet.descriptors.filter((noted) => noted.word === word));
    const [first] = strengths;
    if (first === undefined) return [];
    const strongest = strengths.reduce((most, { strength }) => (strength > most ? strength : most), first.strength);
    return [{ word, judges: strengths.length, strongest }];
  }).sort((a, b) => b.judges - a.judges);
}
