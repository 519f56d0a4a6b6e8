import type { CsvCell } from "../csv";
import type { TastingFacts } from "./results-facts";
import { SHEET_PARTS, STRENGTH_NAMES } from "./sheet";

/** What a row of the export says; a sheet, or an answer of a difference test, is a row. Judges are seats, not names. */
export const TIDY_COLUMNS = [
  ...["tasting", "flight", "kind", "seat", "entry", "beer", "brewer", "brew_id", "style"],
  ...SHEET_PARTS.map((part) => `${part}_points`),
  ...["total_points", "descriptors"],
  ...SHEET_PARTS.map((part) => `${part}_note`),
  ...["glass", "is_right", "note", "from_paper"],
] as const;

/** All that judges handed in, a row each. */
export function tidyRows({ title, flights }: TastingFacts): readonly (readonly CsvCell[])[] {
  return flights.flatMap((flight) => {
    const seatOf = (judgeId: string): number | null =>
      flight.judges.find((judge) => judge.judgeId === judgeId)?.seat ?? null;
    const start = [title, flight.title, flight.kind] as const;
    const sheets = flight.sheets.map(({ judgeId, entryNo, total, sheet, enteredBy }) => {
      const entry = flight.entries.find((each) => each.entryNo === entryNo);
      const found = sheet.descriptors.map(({ word, strength }) => `${word} (${STRENGTH_NAMES[strength]})`);
      return [
        ...[...start, seatOf(judgeId), entryNo, entry?.beer ?? null, entry?.brewer ?? null],
        ...[entry?.brewId ?? null, entry?.styleCode ?? null],
        ...SHEET_PARTS.map((part) => sheet.scores[part]),
        ...[total, found.join("; ")],
        ...SHEET_PARTS.map((part) => sheet.notes[part]),
        ...[null, null, null, fromPaper(enteredBy)],
      ];
    });
    const nothing = Array.from({ length: 2 * SHEET_PARTS.length + 7 }, () => null);
    const choices = flight.choices.map(({ judgeId, choice, isRight, enteredBy }) => [
      ...[...start, seatOf(judgeId), ...nothing],
      ...[choice.glassNo, isRight ? "yes" : "no", choice.note, fromPaper(enteredBy)],
    ]);
    return [...sheets, ...choices];
  });
}

const fromPaper = (enteredBy: string | null): "yes" | "no" => (enteredBy === null ? "no" : "yes");
