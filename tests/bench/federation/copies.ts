import { createHash } from "node:crypto";
import { familiesOf, type Family } from "./families";
import { CLUB_MARK, ROUND_MARK, type TemplateTable } from "./template";

interface Source {
  readonly pieces: readonly string[];
  /** Those in which the row comes more than once. */
  readonly families: readonly Family[];
}

/** A table of the template, ready to be written once for each club. */
export interface SourceTable {
  readonly table: string;
  readonly columns: readonly string[];
  readonly linesOf: (club: number) => Generator<string>;
}

/** Lines for COPY: the same for the same seed and club. */
export function sourceTables(template: readonly TemplateTable[], seed: number): readonly SourceTable[] {
  const families = familiesOf(template);
  return template.map(({ table, columns, rows }) => {
    const sources = rows.map(({ values, pieces }): Source => {
      const row = Object.fromEntries(columns.map((column, i) => [column, values[i] ?? null]));
      return { pieces, families: families.filter(({ has }) => has(table, row)) };
    });
    return { table, columns, linesOf: (club) => linesOf({ seed, club, sources, alone: aloneIn(table, columns) }) };
  });
}

function* linesOf(a: {
  readonly seed: number;
  readonly club: number;
  readonly sources: readonly Source[];
  readonly alone: (line: string) => string;
}): Generator<string> {
  for (const { pieces, families } of a.sources) {
    yield written(pieces, { seed: a.seed, club: a.club, round: 0, own: NONE });
    for (const { more, own } of families) {
      for (let round = 1; round <= more; round += 1) {
        yield a.alone(written(pieces, { seed: a.seed, club: a.club, round, own }));
      }
    }
  }
}

const NONE: ReadonlySet<string> = new Set();

interface Copy {
  readonly seed: number;
  readonly club: number;
  readonly round: number;
  readonly own: ReadonlySet<string>;
}

function written(pieces: readonly string[], copy: Copy): string {
  // Cut by a pattern in brackets: every other piece is what the pattern found.
  return pieces.map((piece, i) => (i % 2 === 0 ? piece : another(piece, copy))).join("");
}

function another(piece: string, { seed, club, round, own }: Copy): string {
  if (piece === CLUB_MARK) return String(club);
  if (piece === ROUND_MARK) return round === 0 ? "" : `-${String(round)}`;
  return copyOf(piece, `${String(seed)}:${String(club)}:${own.has(piece) ? String(round) : ""}`);
}

/** The identifier that stands for another one in a copy. */
export function copyOf(id: string, copy: string): string {
  const hex = createHash("sha256").update(`${copy}:${id}`).digest("hex");
  // Version 8: of a maker's own making.
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-8${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

/** A copied brew is of no shared brew, in which each brewer has one. */
function aloneIn(table: string, columns: readonly string[]): (line: string) => string {
  if (table !== "brew") return (line) => line;
  const shared = ["shared_brew_id", "plan_version"].map((column) => columns.indexOf(column));
  return (line) =>
    line
      .split("\t")
      .map((text, i) => (shared.includes(i) ? "\\N" : text))
      .join("\t");
}
