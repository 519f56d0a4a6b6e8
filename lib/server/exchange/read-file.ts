import "server-only";
import type { Equipment } from "@/lib/calc/ledger";
import { FILE_LIMITS, UnreadableFileError } from "@/lib/model/exchange/file-node";
import { readJson } from "@/lib/model/exchange/read-json";
import { readRecipes, type ReadFile } from "@/lib/model/exchange/read-recipes";
import { decodeText } from "./decode-text";
import { readXml } from "./read-xml";

/** Reads a file of recipes in either standard, which it is told by its first character. Nothing is stored. */
export function readRecipeFile(bytes: Uint8Array, kettle: Equipment | null): ReadFile {
  if (bytes.length > FILE_LIMITS.bytes) {
    throw new UnreadableFileError(null, `The file is larger than ${String(FILE_LIMITS.bytes / 1024 / 1024)} MB.`);
  }
  const text = decodeText(bytes).replace(/^\ufeff/, "");
  const first = text.trimStart().charAt(0);
  if (first === "<") return readRecipes("beerxml", readXml(text), kettle);
  if (first === "{") return readRecipes("beerjson", readJson(text), kettle);
  const reason =
    first === ""
      ? "The file is empty."
      : "This is neither BeerJSON, which begins with {, nor BeerXML, which begins with <.";
  throw new UnreadableFileError(null, reason);
}
