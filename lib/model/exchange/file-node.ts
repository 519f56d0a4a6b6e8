/** A part of a file with the line it stands on. A record is a map, so that no key can be mistaken for a method. */
export interface FileNode {
  readonly line: number;
  readonly value: string | number | boolean | null | readonly FileNode[] | ReadonlyMap<string, FileNode>;
}

/** Plain JSON. */
export type Plain = string | number | boolean | null | readonly Plain[] | PlainRecord;

export interface PlainRecord {
  readonly [key: string]: Plain;
}

/** Bounds of a file, whatever its format: far beyond a recipe, and soon told. */
export const FILE_LIMITS = { bytes: 2 * 1024 * 1024, depth: 24, nodes: 200_000, attributes: 8, recipes: 500 } as const;

/** The names that lead from an object to what all objects share. No standard has a field of such a name. */
const INHERITED: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"]);

export function isInheritedName(name: string): boolean {
  return INHERITED.has(name);
}

/** A file that is not taken, in words for the person who brought it. */
export class UnreadableFileError extends Error {
  override readonly name = "UnreadableFileError";

  constructor(
    readonly line: number | null,
    reason: string,
    options?: ErrorOptions,
  ) {
    super(line === null ? reason : `Line ${String(line)}: ${reason}`, options);
  }
}

export function isRecord(value: FileNode["value"]): value is ReadonlyMap<string, FileNode> {
  return value instanceof Map;
}

export function isList(value: FileNode["value"]): value is readonly FileNode[] {
  return Array.isArray(value);
}

/** The same without the lines. */
export function plainOf({ value }: FileNode): Plain {
  if (isRecord(value)) return Object.fromEntries([...value].map(([key, part]) => [key, plainOf(part)]));
  if (isList(value)) return value.map(plainOf);
  return value;
}

export function isPlainRecord(value: Plain | undefined): value is PlainRecord {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

export function isPlainList(value: Plain | undefined): value is readonly Plain[] {
  return Array.isArray(value);
}
