import type { MashAcid, PrimingSugar } from "@/lib/calc/ledger";
import type { Salt, SaltGrams } from "@/lib/calc/water";
import type { Grams } from "@/lib/calc/units";
import { ACID_FIELDS, SALT_FIELDS } from "../../recipe-fields";
import type { FieldCursor } from "../field-cursor";
import { acidNamed, saltNamed } from "../known-names";
import { primingNamed } from "../priming-names";
import { takeMeasure } from "./measure";
import { SMALL_MASS, VOLUME, type UnitTable } from "./units";

export interface Extras {
  readonly salts: SaltGrams;
  readonly acid: MashAcid | null;
  readonly priming: PrimingSugar | null;
}

const MILLILITRES: UnitTable = Object.fromEntries(
  // Its own unit stands first, as in every table.
  ["ml", ...Object.keys(VOLUME).filter((unit) => unit !== "ml")].map((unit) => [
    unit,
    (value: number) => (unit === "ml" ? value : 1000 * (VOLUME[unit]?.(value) ?? Number.NaN)),
  ]),
);

/** What this book knows among spices, finings and water agents: salts, acids of a known strength, priming sugar. */
export function readMiscellaneous(additions: FieldCursor): Extras {
  const salts: Partial<Record<Salt, Grams>> = {};
  let acid: MashAcid | null = null;
  let priming: PrimingSugar | null = null;
  for (const row of additions.items) {
    const name = row.at("name").text ?? "";
    const salt = saltNamed(name);
    const solution = acidNamed(name);
    if (row.at("timing", "use").text === "add_to_package" && priming === null && primingNamed(name) !== null) {
      priming = primingNamed(name);
      row.at("name").take("the priming sugar");
      row.at("amount").keep("this book works the amount out");
    } else if (row.at("type").text === "water agent" && salt !== null && salts[salt] === undefined) {
      const grams = takeMeasure(row.at("amount"), SALT_FIELDS[salt], SMALL_MASS);
      if (grams === null) continue;
      salts[salt] = grams;
      takeAgent(row, "a salt");
    } else if (row.at("type").text === "water agent" && solution !== null && acid === null) {
      const ml = takeMeasure(row.at("amount"), ACID_FIELDS.ml, MILLILITRES);
      if (ml === null) continue;
      acid = { solution, ml };
      takeAgent(row, "an acid in the mash water");
    }
  }
  return { salts, acid, priming };
}

function takeAgent(row: FieldCursor, what: string): void {
  row.at("name").take(what);
  row.at("type").take();
}
