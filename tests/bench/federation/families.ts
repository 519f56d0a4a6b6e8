import type { TemplateTable } from "./template";

/** Rows that come several times in a club: a recipe, a brew, a person with their bench. */
export interface Family {
  /** How often besides the first. */
  readonly more: number;
  /** The identifiers that are others in each copy; all the rest names what the club has once. */
  readonly own: ReadonlySet<string>;
  /** Which rows of a table belong to it. */
  readonly has: (table: string, row: Row) => boolean;
}

/** A row of the template by the names of its columns. */
export type Row = Readonly<Record<string, string | null>>;

/** What one club of the federation has. */
export const CLUB_SIZE = { recipes: 100, members: 50, readings: 1000 } as const;

const RECIPE_TABLES = ["recipe", "recipe_revision"];
const BREW_TABLES = ["brew_event", "brew_summary"];

export function rowsOf(tables: readonly TemplateTable[], name: string): readonly Row[] {
  const found = tables.find(({ table }) => table === name);
  if (found === undefined) return [];
  return found.rows.map(({ values }) =>
    Object.fromEntries(found.columns.map((column, i) => [column, values[i] ?? null])),
  );
}

export function familiesOf(tables: readonly TemplateTable[]): readonly Family[] {
  return [recipes(tables), people(tables), brews(tables)];
}

function recipes(tables: readonly TemplateTable[]): Family {
  const own = new Set(rowsOf(tables, "recipe").map(({ id }) => id ?? ""));
  return {
    more: Math.ceil(CLUB_SIZE.recipes / own.size) - 1,
    own,
    has: (table, row) => RECIPE_TABLES.includes(table) || (table === "search_document" && row["kind"] === "recipe"),
  };
}

/** More members like one who only belongs to the club. */
function people(tables: readonly TemplateTable[]): Family {
  const users = rowsOf(tables, "app_user");
  const one = users.find(({ email_norm: email }) => email?.startsWith("kasper@"))?.["id"] ?? "";
  const bench = rowsOf(tables, "space").find(({ owner_user_id: owner }) => owner === one)?.["id"] ?? "";
  return {
    more: CLUB_SIZE.members - users.length,
    own: new Set([one, bench]),
    has: (table, row) =>
      (table === "app_user" && row["id"] === one) ||
      (table === "space" && row["id"] === bench) ||
      (table === "membership" && row["user_id"] === one),
  };
}

/** The longest logs once more, as brews that nobody shares, until the club has its readings. */
function brews(tables: readonly TemplateTable[]): Family {
  const events = rowsOf(tables, "brew_event");
  const counts = new Map<string, number>();
  for (const { brew_id: brew } of events) counts.set(brew ?? "", (counts.get(brew ?? "") ?? 0) + 1);
  const copied = new Set<string>();
  let readings = events.length;
  for (const [brew, count] of [...counts].sort(([, a], [, b]) => b - a)) {
    if (readings >= CLUB_SIZE.readings) break;
    copied.add(brew);
    readings += count;
  }
  const logged = events.filter(({ brew_id: brew }) => copied.has(brew ?? ""));
  return {
    more: 1,
    own: new Set([...copied, ...logged.flatMap(({ id, device_id: device }) => [id ?? "", device ?? ""])]),
    has: (table, row) =>
      (table === "brew" && copied.has(row["id"] ?? "")) ||
      (BREW_TABLES.includes(table) && copied.has(row["brew_id"] ?? "")) ||
      (table === "search_document" && row["kind"] === "brew" && copied.has(row["id"] ?? "")),
  };
}
