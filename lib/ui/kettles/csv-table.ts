import { limitWords } from "@/lib/calc/explain";
import type { CsvCell } from "@/lib/model/csv";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import { limitNumbers } from "../equipment/limit-numbers";
import { dimensionOf, NUMBER_COLUMNS } from "./kettle-columns";
import type { KettleRow } from "./shown-rows";
import { wayWords } from "./way-words";

/** More digits than the screen, so that somebody can go on computing; fewer than would pretend to be exact. */
const SIGNIFICANT = 6;

/** The heading line: each number with its unit, and the ends of the 80 % interval of what is predicted. */
export function csvHeading(preferences: Preferences): readonly string[] {
  const numbers = NUMBER_COLUMNS.flatMap(({ id, label, isPredicted }) => {
    const { unit } = displayUnit(dimensionOf(id), preferences);
    const name = `${label} (${unit})`;
    const ends = [`${label}, 80 % interval from (${unit})`, `${label}, 80 % interval to (${unit})`];
    return isPredicted ? [name, ...ends] : [name];
  });
  return ["Kettle", "Brewer", "Fits", "Limits that it breaks", "Way out", ...numbers];
}

const FITS = { fits: "yes", way: "by a way out", not: "no" } as const;

/** One row of the table in the columns of the heading. */
export function csvRow({ entry, figures }: KettleRow, preferences: Preferences): readonly CsvCell[] {
  const { kettleName, ownerName } = entry;
  if (figures === null) return [kettleName ?? "no kettle described yet", ownerName];
  const { fit, reasons, way, isWayLost } = figures;
  const broken = reasons.map((limit) => `${limitWords(limit).title}: ${limitNumbers(limit, preferences)}`).join("; ");
  const chosen = way === null ? (isWayLost ? "the one chosen no longer works" : "") : wayWords(way, preferences);
  const numbers = NUMBER_COLUMNS.flatMap(({ id, isPredicted }): readonly CsvCell[] => {
    const { fromLibrary } = displayUnit(dimensionOf(id), preferences);
    const cell = (of: number | null): CsvCell => (of === null ? null : significant(fromLibrary(of)));
    const value = cell(figures.values[id]);
    if (!isPredicted) return [value];
    const interval = figures.intervals?.[id] ?? { low80: null, high80: null };
    return [value, cell(interval.low80), cell(interval.high80)];
  });
  return [kettleName, ownerName, FITS[fit], broken, chosen, ...numbers];
}

function significant(value: number): number {
  return Number(value.toPrecision(SIGNIFICANT));
}
