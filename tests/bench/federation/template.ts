import type { Client } from "pg";

/** One row of the template, cut at everything that is another one in each copy. */
export interface TemplateRow {
  readonly pieces: readonly string[];
}

export interface TemplateTable {
  readonly table: string;
  readonly columns: readonly string[];
  readonly rows: readonly (TemplateRow & { readonly values: readonly (string | null)[] })[];
}

/** Stands in a word for what makes it another one in each club, or in each copy within a club. */
export const CLUB_MARK = "⟦club⟧";
export const ROUND_MARK = "⟦round⟧";

const VARIABLE = /([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}|⟦[a-z]+⟧)/;

/** Words that may be there once only, or that should tell the copies apart. Everything else stays as it is. */
const WORDS: Readonly<Record<string, Readonly<Record<string, (value: string) => string>>>> = {
  space: {
    slug: (slug) => (slug.startsWith("bench-") ? `${slug}-${CLUB_MARK}${ROUND_MARK}` : `club-${CLUB_MARK}`),
    name: (name) => (name === "My bench" ? name : `Club ${CLUB_MARK} of the federation (invented)`),
  },
  app_user: {
    email_norm: (email) => `${email.split("@")[0] ?? ""}${ROUND_MARK}@club-${CLUB_MARK}.example`,
    display_name: (name) => `${name}${ROUND_MARK}`,
  },
  recipe: { title: (title) => `${title}${ROUND_MARK}` },
  search_document: { title: (title) => `${title}${ROUND_MARK}` },
  public_recipe: { address: (address) => `${address}-${CLUB_MARK}` },
  public_result: { address: (address) => `${address}-${CLUB_MARK}` },
};

/** Not copied: what is passing, or of one process. */
const PASSING = ["audit_log_default", "auth_session", "brew_mark", "outbox", "idempotency"];

/** The club with this address and everything of it, its members and their own benches; parents before children. */
export async function readTemplate(client: Client, slug: string): Promise<readonly TemplateTable[]> {
  const { rows: spaces } = await client.query<{ id: string }>(
    `SELECT s.id FROM space s WHERE s.slug = $1 OR s.kind = 'person' AND s.owner_user_id IN
       (SELECT m.user_id FROM membership m JOIN space c ON c.id = m.space_id WHERE c.slug = $1)`,
    [slug],
  );
  const ids = spaces.map(({ id }) => id);
  const tables: TemplateTable[] = [];
  for (const { table, columns, by } of await copiedTables(client)) {
    const texts = columns.map((column) => `${client.escapeIdentifier(column)}::text`).join(", ");
    const { rows } = await client.query<(string | null)[]>({
      text: `SELECT ${texts} FROM ${client.escapeIdentifier(table)} WHERE ${by} ORDER BY 1, 2`,
      values: [ids],
      rowMode: "array",
    });
    tables.push({ table, columns, rows: rows.map((values) => ({ values, pieces: piecesOf(table, columns, values) })) });
  }
  return tables;
}

function piecesOf(table: string, columns: readonly string[], values: readonly (string | null)[]): readonly string[] {
  const words = WORDS[table];
  const texts = values.map((value, i) => {
    if (value === null) return "\\N";
    return escaped(words?.[columns[i] ?? ""]?.(value) ?? value);
  });
  return `${texts.join("\t")}\n`.split(VARIABLE);
}

/** As COPY reads a text. */
function escaped(value: string): string {
  return value.replaceAll("\\", "\\\\").replaceAll("\t", "\\t").replaceAll("\n", "\\n").replaceAll("\r", "\\r");
}

interface CopiedTable {
  readonly table: string;
  readonly columns: readonly string[];
  /** Which rows are of the spaces in $1. */
  readonly by: string;
}

async function copiedTables(client: Client): Promise<readonly CopiedTable[]> {
  const { rows } = await client.query<{ table: string; columns: string[] }>(`
    SELECT c.relname::text AS table, array_agg(a.attname::text ORDER BY a.attnum) AS columns
    FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = ''
    WHERE c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace GROUP BY c.relname ORDER BY c.relname`);
  const found = rows.flatMap(({ table, columns }) => {
    const by = conditionOf(table, columns);
    return by === null || PASSING.includes(table) ? [] : [{ table, columns, by }];
  });
  return inOrder(found, await references(client));
}

function conditionOf(table: string, columns: readonly string[]): string | null {
  if (table === "app_user") return "id IN (SELECT user_id FROM membership WHERE space_id = ANY ($1))";
  if (table === "space") return "id = ANY ($1)";
  const key = ["space_id", "source_space_id"].find((column) => columns.includes(column));
  return key === undefined ? null : `${key} = ANY ($1)`;
}

async function references(client: Client): Promise<ReadonlyMap<string, ReadonlySet<string>>> {
  const { rows } = await client.query<{ child: string; parents: string[] }>(`
    SELECT conrelid::regclass::text AS child, array_agg(confrelid::regclass::text) AS parents
    FROM pg_constraint WHERE contype = 'f' AND conrelid <> confrelid GROUP BY conrelid`);
  return new Map(rows.map(({ child, parents }) => [child, new Set(parents)]));
}

/** Each table behind those that it refers to. */
function inOrder(
  tables: readonly CopiedTable[],
  parentsOf: ReadonlyMap<string, ReadonlySet<string>>,
): readonly CopiedTable[] {
  const ordered: CopiedTable[] = [];
  let left = tables;
  while (left.length > 0) {
    const waiting = new Set(left.map(({ table }) => table));
    const ready = left.filter(({ table }) => ![...(parentsOf.get(table) ?? [])].some((parent) => waiting.has(parent)));
    if (ready.length === 0) throw new Error(`${[...waiting].join(", ")} refer to each other in a circle`);
    ordered.push(...ready);
    left = left.filter((each) => !ready.includes(each));
  }
  return ordered;
}
