import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const FOLDER = fileURLToPath(new URL("../reference/exchange/", import.meta.url));

/** The invented files that are written from the standards' own lists of fields. */
export const beerJsonFile = (): Uint8Array => new Uint8Array(readFileSync(`${FOLDER}invented.beerjson.json`));
export const beerXmlFile = (): Uint8Array => new Uint8Array(readFileSync(`${FOLDER}invented.beerxml.xml`));

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The invented BeerJSON recipe with one change somewhere in it. */
export function changedBeerJson(change: (recipe: Record<string, unknown>) => void): Uint8Array {
  const document = JSON.parse(new TextDecoder().decode(beerJsonFile())) as {
    readonly beerjson: { readonly recipes: readonly [Record<string, unknown>] };
  };
  change(document.beerjson.recipes[0]);
  return bytesOf(JSON.stringify(document, null, 2));
}

/** The invented BeerXML recipe with one piece of its text replaced; it must be there. */
export function changedBeerXml(from: string, to: string): Uint8Array {
  const text = new TextDecoder().decode(beerXmlFile());
  if (!text.includes(from)) throw new Error(`the file does not have ${from}`);
  return bytesOf(text.replace(from, to));
}
