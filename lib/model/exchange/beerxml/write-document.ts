import { isPlainList, isPlainRecord, type Plain, type PlainRecord } from "../file-node";
import { RECORD_SETS } from "./standard-tags";

const HEADER = '<?xml version="1.0" encoding="UTF-8"?>';

/** A document of recipes. UTF-8, which every reader of XML must know; the standard's own example names Latin-1. */
export function beerXmlDocument(recipes: readonly PlainRecord[]): string {
  return `${HEADER}\n${element("RECIPES", recipes, 0).join("\n")}\n`;
}

function element(tag: string, value: Plain, depth: number): readonly string[] {
  const name = tagOf(tag);
  const pad = "  ".repeat(depth);
  if (isPlainList(value)) {
    const inside = value.flatMap((row) => rowOf(RECORD_SETS[name] ?? "ITEM", row, depth + 1));
    return wrap(name, "", inside, pad);
  }
  if (isPlainRecord(value)) {
    const attributes = Object.entries(value)
      .filter(([key]) => key.startsWith("@"))
      .map(([key, text]) => ` ${key.slice(1)}="${escaped(textOf(text))}"`)
      .join("");
    const inside = Object.entries(value).flatMap(([key, part]) => partOf(key, part, depth + 1));
    return wrap(name, attributes, inside, pad);
  }
  return [`${pad}<${name}>${escaped(String(value))}</${name}>`];
}

/** A part of a set that is not one of its records is kept as a record of one tag with a mark before its name. */
function rowOf(item: string, row: Plain, depth: number): readonly string[] {
  const [only, ...more] = isPlainRecord(row) ? Object.entries(row) : [];
  if (only !== undefined && more.length === 0 && only[0].startsWith("#") && only[0] !== "#text") {
    return element(only[0].slice(1), only[1], depth);
  }
  return element(item, row, depth);
}

function partOf(key: string, value: Plain, depth: number): readonly string[] {
  if (key.startsWith("@")) return [];
  if (key === "#text") return [`${"  ".repeat(depth)}${escaped(textOf(value))}`];
  return element(key, value, depth);
}

function wrap(name: string, attributes: string, inside: readonly string[], pad: string): readonly string[] {
  if (inside.length === 0) return [`${pad}<${name}${attributes}/>`];
  return [`${pad}<${name}${attributes}>`, ...inside, `${pad}</${name}>`];
}

/** A text beside others; nothing of more parts is kept under such a key. */
function textOf(value: Plain): string {
  return typeof value === "object" ? "" : String(value);
}

/** The second of two tags of one name is kept with its number. */
function tagOf(key: string): string {
  return key.replace(/#\d+$/, "");
}

// Characters that no XML document may hold, escaped or not.
// eslint-disable-next-line no-control-regex -- the control characters are what is taken out
const FORBIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

function escaped(text: string): string {
  return text
    .replaceAll(FORBIDDEN, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
