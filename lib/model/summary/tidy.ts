import { QUANTITIES } from "@/lib/calc/ledger";
import type { CsvCell } from "../csv";
import type { LoggedReading } from "../log/logged-readings";
import { loggedRange } from "../log/series";
import type { BrewAmongOthers } from "./compared-brew";

/** The library's unit of a dimension, in which tidy data are given to whoever analyses elsewhere. */
const UNITS: Readonly<Record<string, string>> = {
  volume: "L",
  temperature: "°C",
  extract: "°P",
  minutes: "min",
  fraction: "1",
  alcohol: "% vol",
};

const BREW_COLUMNS = [
  ...["brew", "beer", "recipe", "revision", "shared_brew", "brewer", "kettle", "kettle_kind", "state", "begun"],
] as const;

/** One row a brew and quantity. */
export const FIGURE_COLUMNS = [
  ...BREW_COLUMNS,
  ...["quantity", "unit", "planned", "planned_low80", "planned_high80", "measured", "measured_sd"],
  ...["against_plan", "reconciled"],
] as const;

/** One row a reading that counts. */
export const READING_COLUMNS = [
  ...BREW_COLUMNS,
  ...["reading", "at", "quantity", "unit", "value", "sd", "instrument"],
] as const;

function brewCells(brew: BrewAmongOthers): readonly CsvCell[] {
  return [
    ...[brew.id, brew.title, brew.recipeId, brew.recipeRev, brew.sharedBrewTitle, brew.brewerName],
    ...[brew.equipmentName, brew.equipmentKind, brew.state, brew.startedAt?.toISOString() ?? null],
  ];
}

export function figureRows(brew: BrewAmongOthers): readonly (readonly CsvCell[])[] {
  return (brew.summary?.figures ?? []).map((figure) => [
    ...brewCells(brew),
    ...[figure.quantity, UNITS[QUANTITIES[figure.quantity].dimension] ?? ""],
    ...[figure.planned, figure.plannedLow80, figure.plannedHigh80, figure.measured, figure.measuredSd],
    ...[figure.expectation, figure.reconciled],
  ]);
}

export function readingRows(
  brew: BrewAmongOthers,
  readings: readonly LoggedReading[],
): readonly (readonly CsvCell[])[] {
  return readings
    .filter(({ isVoid }) => !isVoid)
    .map(({ id, at, measured: { quantity, value, sd, instrument } }) => [
      ...brewCells(brew),
      ...[id, new Date(at).toISOString(), quantity, loggedRange(quantity).unit, value, sd, instrument],
    ]);
}

/** A row as a record, for JSON. */
export function asRecord(columns: readonly string[], row: readonly CsvCell[]): Readonly<Record<string, CsvCell>> {
  return Object.fromEntries(columns.map((column, i) => [column, row[i] ?? null]));
}
