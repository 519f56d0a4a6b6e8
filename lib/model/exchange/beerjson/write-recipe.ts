import type { HopAddition, Recipe } from "@/lib/calc/ledger";
import { platoToSpecificGravity } from "@/lib/calc/gravity";
import { degreesPlato } from "@/lib/calc/units";
import type { RecipeContent } from "../../recipe-content";
import { STYLES } from "../../styles";
import type { Plain, PlainRecord } from "../file-node";
import { STYLE_GUIDE, partsOfStyle } from "../known-names";
import { writtenFigures } from "../written-figures";
import { writtenNumber } from "../written-number";
import { measure, time } from "./written-measure";
import { STAND_NAME } from "./stand-name";
import { writtenIngredients } from "./write-ingredients";

interface TitledRecipe {
  readonly title: string;
  readonly content: RecipeContent;
}

const STAND_STEP = 2;

/** One recipe as the standard writes it, with the figures of the kettle that it is written for. */
export function writtenBeerJsonRecipe({ title, content }: TitledRecipe): PlainRecord {
  const { recipe, notes, style, writtenOn } = content;
  const figure = writtenFigures(content);
  const efficiency = figure("fermenter.efficiency");
  const preBoil = figure("kettle.preBoil");
  return {
    name: title,
    type: typeOf(recipe),
    batch_size: measure(recipe.intoFermenter, "l"),
    efficiency: { brewhouse: measure(100 * (efficiency ?? 0), "%") },
    ...(style === null ? {} : { style: styleOf(style) }),
    ingredients: writtenIngredients(
      recipe,
      { cells: figure("fermenter.cells"), primingG: figure("package.primingSugar") },
      hopTiming,
    ),
    ...(recipe.mash.length === 0 ? {} : { mash: mashOf(recipe, writtenOn.ambient.grain) }),
    boil: boilOf(recipe, preBoil),
    ...(notes === "" ? {} : { notes }),
    ...gravity("original_gravity", figure("fermenter.originalExtract")),
    ...gravity("final_gravity", figure("fermenter.finalExtract")),
    ...optional("alcohol_by_volume", figure("package.alcohol"), "%"),
    ...bitternessOf(figure("fermenter.bitterness")),
    ...optional("color_estimate", figure("fermenter.colour"), "EBC"),
    carbonation: writtenNumber(recipe.packaging.carbonation),
    fermentation: {
      name: "Fermentation",
      fermentation_steps: [{ name: "Fermentation", start_temperature: measure(recipe.yeast.celsius, "C") }],
    },
    packaging: packagingOf(recipe),
  };
}

function typeOf({ fermentables }: Recipe): string {
  const isMashed = fermentables.some(({ station }) => station === "mash");
  if (!isMashed) return "extract";
  return fermentables.some(({ kind }) => kind === "malt extract") ? "partial mash" : "all grain";
}

function optional(key: string, value: number | null, unit: string): PlainRecord {
  return value === null ? {} : { [key]: measure(value, unit) };
}

function gravity(key: string, plato: number | null): PlainRecord {
  return plato === null ? {} : { [key]: measure(platoToSpecificGravity(degreesPlato(plato)), "sg") };
}

/** This book follows the real temperature curve, which none of the standard's methods does. */
function bitternessOf(ibu: number | null): PlainRecord {
  return ibu === null ? {} : { ibu_estimate: { method: "Other", value: measure(ibu, "IBUs") } };
}

function styleOf(code: string): PlainRecord {
  const { number, letter } = partsOfStyle(code);
  return {
    name: STYLES.find((style) => style.code === code)?.name ?? code,
    category: number === null ? code : `Category ${String(number)}`,
    ...(number === null ? {} : { category_number: number }),
    ...(letter === "" ? {} : { style_letter: letter }),
    style_guide: STYLE_GUIDE,
    type: "beer",
  };
}

function mashOf({ mash, thickness }: Recipe, grainC: number): Plain {
  return {
    name: "Mash",
    grain_temperature: measure(grainC, "C"),
    mash_steps: mash.map((rest, index) => ({
      name: `Rest ${String(index + 1)}`,
      type: index === 0 ? "infusion" : "temperature",
      step_temperature: measure(rest.celsius, "C"),
      step_time: time(rest.minutes),
      ...(index === 0 && thickness !== null ? { water_grain_ratio: measure(thickness, "l/kg") } : {}),
    })),
  };
}

function boilOf({ boil, stand }: Recipe, preBoil: number | null): PlainRecord {
  const steps =
    stand === null
      ? {}
      : {
          boil_steps: [
            { name: "Boil", step_time: time(boil) },
            {
              name: STAND_NAME,
              start_temperature: measure(stand.celsius, "C"),
              end_temperature: measure(stand.celsius, "C"),
              step_time: time(stand.minutes),
            },
          ],
        };
  return { ...optional("pre_boil_size", preBoil, "l"), boil_time: time(boil), ...steps };
}

/** Where and when hops go in: back from the end of the boil or of the stand, which is its second step. */
function hopTiming({ use, minutes }: HopAddition): PlainRecord {
  if (use === "dry") return { use: "add_to_fermentation" };
  const timing = { use: "add_to_boil", time: time(minutes) };
  return use === "stand" ? { ...timing, step: STAND_STEP } : timing;
}

function packagingOf({ packaging: { container, warmest, carbonation } }: Recipe): PlainRecord {
  const vessel = {
    name: container === "bottle" ? "Bottles" : "Keg",
    type: container,
    start_temperature: measure(warmest, "C"),
    carbonation: writtenNumber(carbonation),
  };
  return { name: "Packaging", packaging_vessels: [vessel] };
}
