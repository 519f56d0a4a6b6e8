import "server-only";

/**
 * JSON with the keys of every object in order and without blanks, so that the same content has the same hash whatever
 * form or database it went through. Written by hand because every reading of a sensor goes through it: `JSON.stringify`
 * with a function that orders the keys says the same and takes five times as long.
 */
export function canonicalJson(value: unknown): string {
  return textOf(value, "") ?? "null";
}

/** undefined for what JSON leaves out. */
function textOf(value: unknown, key: string): string | undefined {
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  if (hasToJson(value)) return textOf(value.toJSON(key), key);
  if (Array.isArray(value)) return `[${value.map((part, index) => textOf(part, String(index)) ?? "null").join(",")}]`;
  let text = "";
  for (const name of inOrder(Object.keys(value))) {
    const part = textOf(value[name as keyof typeof value], name);
    if (part !== undefined) text += text === "" ? quoted(name) + part : `,${quoted(name)}${part}`;
  }
  return `{${text}}`;
}

function hasToJson(value: object): value is { readonly toJSON: (key: string) => unknown } {
  return "toJSON" in value && typeof value.toJSON === "function";
}

/** By their code units; but names that count stand first and in the order of their numbers, as an object keeps them. */
function inOrder(names: string[]): string[] {
  names.sort();
  if (!names.some(beginsWithDigit)) return names;
  return Object.keys(Object.fromEntries(names.map((name) => [name, true])));
}

function beginsWithDigit(name: string): boolean {
  const first = name.charCodeAt(0);
  return first >= 48 && first <= 57;
}

const MOST_NAMES = 1000;
const known = new Map<string, string>();

/** A name as JSON with its colon. The names of our own records are few, and are remembered. */
function quoted(name: string): string {
  const text = known.get(name);
  if (text !== undefined) return text;
  const made = `${JSON.stringify(name)}:`;
  if (known.size < MOST_NAMES) known.set(name, made);
  return made;
}
