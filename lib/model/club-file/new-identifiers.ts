import type { ClubFilePart, ClubRow } from "./club-file";
import { CLUB_PARTS, type ClubPart } from "./parts";

type Json = ClubRow[string];

/** Identifiers of a file and what each becomes. */
export interface NewIdentifiers {
  readonly records: ReadonlyMap<string, string>;
  readonly people: ReadonlyMap<string, string>;
}

/**
 * Gives every record of a file a new identifier. They are given in the order of the old ones, so that what is sorted by
 * identifier stays in its order, and a club that is exported again is the same file but for the identifiers.
 */
export function newIdentifiers(parts: readonly ClubFilePart[], make: () => string): ReadonlyMap<string, string> {
  const old = [...new Set(parts.flatMap(({ table, rows }) => rows.flatMap((row) => namedIn(row, partOf(table).ids))))];
  const made = old.map(() => make()).sort();
  return new Map(old.sort().map((id, index) => [id, made[index] ?? make()]));
}

/** Everybody whom the rows of a file name. */
export function peopleIn(parts: readonly ClubFilePart[]): readonly string[] {
  return [...new Set(parts.flatMap(({ table, rows }) => rows.flatMap((row) => namedIn(row, partOf(table).people))))];
}

function namedIn(row: ClubRow, columns: readonly string[]): readonly string[] {
  return columns.flatMap((column) => {
    const value = row[column];
    return typeof value === "string" ? [value] : [];
  });
}

/** A row with its new identifiers, also where they stand inside of a column. */
export function renamedRow(row: ClubRow, identifiers: NewIdentifiers): ClubRow {
  return Object.fromEntries(Object.entries(row).map(([column, value]) => [column, renamed(value, identifiers)]));
}

function renamed(value: Json, identifiers: NewIdentifiers): Json {
  const { records, people } = identifiers;
  if (typeof value === "string") return records.get(value) ?? people.get(value) ?? value;
  if (Array.isArray(value)) return value.map((part) => renamed(part, identifiers));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, renamed(part, identifiers)]));
}

export function partOf(table: string): ClubPart {
  const found = CLUB_PARTS.find((part) => part.table === table);
  if (found === undefined) throw new Error(`no part of a club's file is called ${table}`);
  return found;
}
