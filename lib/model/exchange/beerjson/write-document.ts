import type { Recipe } from "@/lib/calc/ledger";
import type { Plain, PlainRecord } from "../file-node";
import { isPlainList, isPlainRecord } from "../file-node";
import { isStandardPath, mayHoldMore } from "./standard-fields";
import { fermentableBase } from "./write-ingredients";
import { measure } from "./written-measure";

type BeerJsonVersion = 2.06 | 3;

/** A document of recipes, each of them written already, with records of what a row of a recipe may not say. */
export function beerJsonDocument(
  recipes: readonly PlainRecord[],
  contents: readonly Recipe[],
  version: BeerJsonVersion,
): PlainRecord {
  const document: PlainRecord = {
    version,
    fermentables: distinct(
      contents.flatMap(({ fermentables }) =>
        fermentables.map((row) => ({ ...fermentableBase(row), moisture: measure(100 * row.moisture, "%") })),
      ),
    ),
    cultures: distinct(
      contents.map(({ yeast }) => ({
        name: yeast.name,
        type: yeast.celsius < 15 ? "lager" : "ale",
        form: "dry",
        attenuation_range: {
          minimum: measure(100 * yeast.attenuationLow, "%"),
          maximum: measure(100 * yeast.attenuationHigh, "%"),
        },
      })),
    ),
    recipes: recipes.map((written) => atVersion(written, version, ["recipes"])),
  };
  return { beerjson: document };
}

/** Each record once; two malts of one name that differ are two records. */
function distinct(records: readonly PlainRecord[]): readonly PlainRecord[] {
  return [...new Map(records.map((record) => [JSON.stringify(record), record])).values()];
}

/**
 * What changed between the versions: fluoride was misspelt before 3.0, wheat is no type of culture before it, and from
 * it on a field that the standard does not have makes the document invalid, but in the three types that are left open.
 */
function atVersion(value: Plain, version: BeerJsonVersion, path: readonly string[]): Plain {
  if (isPlainList(value)) return value.map((part) => atVersion(part, version, path));
  if (!isPlainRecord(value)) return value;
  const entries = Object.entries(value).flatMap(([key, part]) => {
    const name = nameAt(version, key, value);
    if (name === null) return [];
    const at = [...path, name];
    if (version === 3 && !isStandardPath(at)) return mayHoldMore(at) ? [[name, part] as const] : [];
    const isWheat = version !== 3 && part === "wheat" && at.join(".").endsWith("culture_additions.type");
    return [[name, isWheat ? "ale" : atVersion(part, version, at)] as const];
  });
  return Object.fromEntries(entries);
}

/** The name of a field in a version; null for the second of two spellings of one. */
function nameAt(version: BeerJsonVersion, key: string, within: PlainRecord): string | null {
  if (key !== "fluoride" && key !== "flouride") return key;
  const wanted = version === 3 ? "fluoride" : "flouride";
  // Where both are given, readers prefer the right spelling.
  const isSecond = key === "flouride" && Object.hasOwn(within, "fluoride");
  return isSecond ? null : wanted;
}
