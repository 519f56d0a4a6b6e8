import type { Fermentable, HopAddition, Recipe } from "@/lib/calc/ledger";
import { IONS, SALTS, type Ions } from "@/lib/calc/water";
import type { Plain, PlainRecord } from "../file-node";
import { nameOfAcid, nameOfSalt } from "../known-names";
import { nameOfPriming } from "../priming-names";
import { TOP_UP_NAME } from "./read-water";
import { measure } from "./written-measure";

/** Below it an extract is a powder, above it a syrup. */
const DRY_EXTRACT_MOISTURE = 0.1;
const USUAL_FORM = "dry";
const LAGER_C = 15;

export interface WrittenAmounts {
  readonly cells: number | null;
  readonly primingG: number | null;
}

/** Everything that goes into the beer, row by row. */
export function writtenIngredients(
  recipe: Recipe,
  amounts: WrittenAmounts,
  hopTiming: (hop: HopAddition) => PlainRecord,
): PlainRecord {
  const { fermentables, hops, water, topUp } = recipe;
  const extras = miscellaneous(recipe, amounts);
  const topUpRow = topUp === 0 ? [] : [{ ...waterRow(TOP_UP_NAME, water.source), amount: measure(topUp, "l") }];
  return {
    fermentable_additions: fermentables.map((row) => ({ ...fermentableBase(row), ...additionOf(row) })),
    hop_additions: hops.map((hop) => ({
      name: hop.name,
      alpha_acid: measure(100 * hop.alpha, "%"),
      amount: measure(hop.grams, "g"),
      timing: hopTiming(hop),
    })),
    ...(extras.length === 0 ? {} : { miscellaneous_additions: extras }),
    culture_additions: [cultureOf(recipe, amounts.cells)],
    water_additions: [waterRow("Brewing water", water.source), ...topUpRow],
  };
}

/** What the standard wants of a fermentable wherever it stands. */
export function fermentableBase(row: Fermentable): PlainRecord {
  const isGrain = row.kind === "malt" || row.kind === "adjunct";
  return {
    name: row.name,
    type: typeOf(row),
    ...(row.kind === "adjunct" ? { grain_group: "adjunct" } : {}),
    // Of the dry substance for grain; of the weight as it is for all else.
    yield: { fine_grind: measure(100 * (isGrain ? row.extract : row.extract * (1 - row.moisture)), "%") },
    color: measure(row.colour, "EBC"),
  };
}

function typeOf({ kind, moisture }: Fermentable): string {
  if (kind === "sugar") return "sugar";
  if (kind === "malt extract") return moisture < DRY_EXTRACT_MOISTURE ? "dry extract" : "extract";
  return "grain";
}

function additionOf({ kg, station }: Fermentable): PlainRecord {
  return { amount: measure(kg, "kg"), timing: { use: station === "mash" ? "add_to_mash" : "add_to_boil" } };
}

function miscellaneous({ water, packaging }: Recipe, { primingG }: WrittenAmounts): readonly Plain[] {
  const { salts, acid } = water;
  const agent = (name: string, amount: PlainRecord): PlainRecord => ({
    name,
    type: "water agent",
    amount,
    timing: { use: "add_to_mash" },
  });
  const saltRows = SALTS.flatMap((salt) => {
    const grams = salts[salt];
    return grams === undefined ? [] : [agent(nameOfSalt(salt), measure(grams, "g"))];
  });
  const acidRow = acid === null ? [] : [agent(nameOfAcid(acid.solution), measure(acid.ml, "ml"))];
  const { priming } = packaging;
  const primingRow =
    priming === null
      ? []
      : [
          {
            name: nameOfPriming(priming),
            type: "other",
            amount: measure(primingG ?? 0, "g"),
            timing: { use: "add_to_package" },
          },
        ];
  return [...saltRows, ...acidRow, ...primingRow];
}

/** This book knows no species of yeast; a cool one is taken for a lager. */
function cultureOf({ yeast }: Recipe, cells: number | null): PlainRecord {
  return {
    name: yeast.name,
    type: yeast.celsius < LAGER_C ? "lager" : "ale",
    form: USUAL_FORM,
    attenuation: measure(50 * (yeast.attenuationLow + yeast.attenuationHigh), "%"),
    amount: { value: 1, unit: "pkg" },
    ...(cells === null ? {} : { cell_count_billions: Math.max(1, Math.round(cells)) }),
  };
}

function waterRow(name: string, ions: Ions): PlainRecord {
  return { name, ...Object.fromEntries(IONS.map((ion) => [ion, measure(ions[ion], "mg/l")])) };
}
