import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { ROUTE_ROWS } from "@/tests/access/route-rows";
import type { AddressParts } from "./club-addresses";
import { addressOf } from "./page-routes";
import type { Asked } from "./plain-request";

/** The script of a page that devices keep, under the name that its contents gave it. */
function builtScript(page: string): string {
  const list = fileURLToPath(new URL(`../../../.build/${page}/files.json`, import.meta.url));
  const { script } = JSON.parse(readFileSync(list, "utf8")) as { readonly script: string };
  return script.slice(script.lastIndexOf("/") + 1);
}

/** What has no record behind it, or one that only its owner could name. */
const FIXED: AddressParts = {
  "...nextauth": "csrf",
  token: "a".repeat(43),
};

/** Where a row of the table leads, with the records of a club in it. */
export function placeOf(route: string, parts: AddressParts): Asked {
  const [method = "", pattern = ""] = route.split(" ");
  const known = {
    ...parts,
    ...FIXED,
    ...(pattern.endsWith("/files/[file]") && { file: builtScript(pattern.split("/")[1] ?? "") }),
    ...(/\/(?:shared-brews|recipes)\//.test(pattern) && { equipment: parts.sharedKettle ?? "" }),
  };
  const { query } = ROUTE_ROWS[route] ?? {};
  const path = addressOf(pattern.replace("/[[...at]]", ""), known);
  return { method, path: query === undefined ? path : `${path}?${addressOf(query, known)}` };
}

const RECORDS = [
  ...["recipe", "equipment", "trial", "brew", "sharedBrew", "sharedKettle", "comparison", "ingredient", "lot"],
  ...["order", "item", "tasting", "photo", "address", "result", "record", "spare", "person"],
];

/** Addresses of the same form with nothing behind them, each with an identifier of its own. */
export function nowhereAt(space: string): AddressParts {
  const ids = Object.fromEntries(RECORDS.map((name): [string, string] => [name, randomUUID()]));
  return { ...ids, space, revision: "1", flight: "1", entry: "417" };
}

/**
 * What a page says, whatever it was asked by: identifiers are named, and what was streamed is put in one order, because its
 * pieces come as they are ready.
 */
export function piecesOf(text: string, parts: AddressParts): readonly string[] {
  const plain = withoutIds(text, parts);
  const shown = plain.replaceAll(/<script[^>]*>[^]*?<\/script>/g, "").split(/(?=<)/);
  const sent = [...plain.matchAll(/self\.__next_f\.push\(\[1,("(?:[^"\\]|\\.)*")\]\)/g)]
    .map(([, piece = '""']) => String(JSON.parse(piece)))
    .join("")
    .split("\n")
    .map((row) => row.replace(/^[0-9a-f]+:/, "").replaceAll(/"\$L?[0-9a-f]+"/g, '"$"'));
  return [...shown, ...sent].sort();
}

/** A text in which the identifiers that it was asked by have their names; each page has a nonce of its own. */
export function withoutIds(text: string, parts: AddressParts): string {
  const long = Object.entries(parts).filter(([, value]) => value.length > 6);
  const plain = long.reduce((rest, [name, value]) => rest.replaceAll(value, `[${name}]`), text);
  return plain.replaceAll(/nonce(?:-|\\?"?[:=]\\?")[\w+/=]+/g, "nonce");
}
