import { z } from "zod";
import { isPlainList, isPlainRecord, type Plain, type PlainRecord } from "./file-node";

/**
 * A step into a document: a key, or the row of a list with a name (the second of two rows of one name is number 1).
 * Rows are found by name, because the next revision may have them in another order.
 */
const step = z.union([z.string().max(200), z.strictObject({ name: z.string().max(4000), nth: z.int().min(0) })]);
export type Step = z.output<typeof step>;

/**
 * What a file said at a place where our own export says something else or nothing. It is written back as long as our
 * export still says what it said when the file was read (`was`): after that, the revision's own value holds.
 */
const leftoverEntry = z.strictObject({ path: z.array(step).max(40), was: z.exactOptional(z.json()), is: z.json() });
export interface LeftoverEntry {
  readonly path: readonly Step[];
  readonly was?: Plain;
  readonly is: Plain;
}

export const leftoverEntries: z.ZodType<readonly LeftoverEntry[]> = z.array(leftoverEntry);

/** As much as the database keeps for one recipe. */
export const LEFTOVER_BYTES = 256 * 1024;

/** Everything in a file that our export of the same recipe does not say, place by place. */
export function leftoverOf(file: Plain, exported: Plain | undefined, path: readonly Step[] = []): LeftoverEntry[] {
  if (exported === undefined) return [{ path, is: file }];
  if (same(file, exported)) return [];
  if (isPlainRecord(file) && isPlainRecord(exported) && !isMeasured(file)) {
    return Object.entries(file).flatMap(([key, value]) => leftoverOf(value, ownValue(exported, key), [...path, key]));
  }
  if (isPlainList(file) && isPlainList(exported)) {
    const theirs = new Map(namedRows(exported).map(({ key, row }) => [key, row]));
    return namedRows(file).flatMap(({ key, step: at, row }) => leftoverOf(row, theirs.get(key), [...path, at]));
  }
  return [{ path, was: exported, is: file }];
}

/** Fields of both standards that name people, and a kettle, which people call after themselves. */
const NAMING = new Set(["author", "coauthor", "BREWER", "ASST_BREWER", "EQUIPMENT"]);

/** What was left over as everybody may read it: who wrote the file did not ask to be named to everybody. */
export function withoutNames(entries: readonly LeftoverEntry[]): readonly LeftoverEntry[] {
  return entries.filter(({ path: [first] }) => typeof first !== "string" || !NAMING.has(first));
}

/**
 * What does not go back into an export, because a later revision says something else there or has no such row. A place
 * at which the revision has come to say the same as the file is none of them.
 */
export function lostOf(exported: PlainRecord, entries: readonly LeftoverEntry[]): readonly LeftoverEntry[] {
  return entries.filter((entry) => !fits(exported, entry.path, entry));
}

function fits(at: Plain | undefined, path: readonly Step[], entry: LeftoverEntry): boolean {
  const [next, ...rest] = path;
  if (next === undefined) return same(at, entry.was) || same(at, entry.is);
  if (typeof next === "string") return isPlainRecord(at) && fits(ownValue(at, next), rest, entry);
  if (!isPlainList(at)) return false;
  const found = namedRows(at).find(({ key }) => key === keyOf(next.name, next.nth));
  return found === undefined ? rest.length === 0 && entry.was === undefined : fits(found.row, rest, entry);
}

/** Our export with what was left over put back into its places. */
export function withLeftover(exported: PlainRecord, entries: readonly LeftoverEntry[]): PlainRecord {
  return entries.reduce<PlainRecord>((document, entry) => {
    const changed = put(document, entry.path, entry);
    return isPlainRecord(changed) ? changed : document;
  }, exported);
}

function put(at: Plain | undefined, path: readonly Step[], entry: LeftoverEntry): Plain | undefined {
  const [next, ...rest] = path;
  if (next === undefined) return same(at, entry.was) ? entry.is : at;
  if (typeof next === "string") return putInRecord(at, next, rest, entry);
  return putInList(at, next, rest, entry);
}

function putInRecord(at: Plain | undefined, key: string, rest: readonly Step[], entry: LeftoverEntry) {
  if (!isPlainRecord(at)) return at;
  const changed = put(ownValue(at, key), rest, entry);
  // Spreading makes own properties only, whatever the key is called.
  return changed === undefined ? at : { ...at, [key]: changed };
}

function putInList(at: Plain | undefined, row: Exclude<Step, string>, rest: readonly Step[], entry: LeftoverEntry) {
  if (!isPlainList(at)) return at;
  const key = keyOf(row.name, row.nth);
  const index = namedRows(at).findIndex((found) => found.key === key);
  // A row that this book could not take goes back whole; one that a later revision removed stays away.
  if (index === -1) return rest.length === 0 && entry.was === undefined ? [...at, entry.is] : at;
  return at.map((found, i) => (i === index ? (put(found, rest, entry) ?? found) : found));
}

function namedRows(list: readonly Plain[]) {
  const seen = new Map<string, number>();
  return list.map((row) => {
    const name = nameOf(row);
    const nth = seen.get(name) ?? 0;
    seen.set(name, nth + 1);
    return { key: keyOf(name, nth), step: { name, nth }, row };
  });
}

function nameOf(row: Plain): string {
  if (!isPlainRecord(row)) return "";
  const name = ownValue(row, "name") ?? ownValue(row, "NAME");
  return typeof name === "string" ? name.trim() : "";
}

function keyOf(name: string, nth: number): string {
  return `${String(nth)} ${name}`;
}

function ownValue(record: PlainRecord, key: string): Plain | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}

/** A value with its unit stays together: half of it means nothing. */
function isMeasured(record: PlainRecord): boolean {
  return Object.hasOwn(record, "unit") && Object.hasOwn(record, "value");
}

function same(a: Plain | undefined, b: Plain | undefined): boolean {
  if (a === b) return true;
  if (isPlainList(a) && isPlainList(b)) return a.length === b.length && a.every((part, i) => same(part, b[i]));
  if (!isPlainRecord(a) || !isPlainRecord(b)) return false;
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && same(a[key], b[key]));
}
