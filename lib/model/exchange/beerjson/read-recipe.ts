import type { HopStand } from "@/lib/calc/ledger";
import { minutes, percent, volumesCo2, type Celsius, type Fraction } from "@/lib/calc/units";
import { measuredField } from "../../field";
import { MASH_STEP_FIELDS, PACKAGING_FIELDS, RECIPE_FIELDS, STAND_FIELDS, YEAST_FIELDS } from "../../recipe-fields";
import { AMBIENT_FIELDS } from "../../ambient-fields";
import type { FieldCursor } from "../field-cursor";
import { STYLE_GUIDE, styleNamed } from "../known-names";
import { EFFICIENCY, NOTES, PRE_BOIL, TITLE } from "../stated-fields";
import type { StatedFigures, StatedRecipe } from "../stated-recipe";
import { readFermentables } from "./read-fermentables";
import { readHops } from "./read-hops";
import { readMiscellaneous } from "./read-miscellaneous";
import { statedMeasure, takeMeasure } from "./measure";
import { readWater } from "./read-water";
import { readYeast } from "./read-yeast";
import { STAND_NAME } from "./stand-name";
import { BITTERNESS, COLOUR, GRAVITY, PERCENT, TEMPERATURE, THICKNESS, TIME, VOLUME } from "./units";

/** Reads one recipe of a document; null where it lacks what no recipe can do without, and the log says what. */
export function readBeerJsonRecipe(recipe: FieldCursor, document: FieldCursor): StatedRecipe | null {
  const title = recipe.at("name").takeText(TITLE);
  const batch = takeMeasure(recipe.at("batch_size"), RECIPE_FIELDS.intoFermenter, VOLUME);
  if (title === null || batch === null) return null;
  recipe.at("type").keep("this book tells it from the fermentables");
  const { stand, standStep } = readStand(recipe);
  const extras = readMiscellaneous(recipe.at("ingredients", "miscellaneous_additions"));
  return {
    title,
    batch,
    notes: recipe.at("notes").takeText(NOTES) ?? "",
    style: readStyle(recipe.at("style")),
    preBoil: takeMeasure(recipe.at("boil", "pre_boil_size"), PRE_BOIL, VOLUME),
    boil: takeMeasure(recipe.at("boil", "boil_time"), RECIPE_FIELDS.boil, TIME) ?? noBoil(recipe),
    efficiency: readEfficiency(recipe.at("efficiency")),
    ...readMash(recipe.at("mash")),
    stand,
    fermentables: readFermentables(recipe.at("ingredients", "fermentable_additions"), document.at("fermentables")),
    hops: readHops(recipe.at("ingredients", "hop_additions"), standStep),
    ...readWater(recipe.at("ingredients", "water_additions")),
    salts: extras.salts,
    acid: extras.acid,
    yeast: {
      ...readYeast(recipe.at("ingredients", "culture_additions"), document.at("cultures")),
      ...readTemperature(recipe),
    },
    packaging: { ...readPackaging(recipe), ...(extras.priming === null ? {} : { priming: extras.priming }) },
    figures: readFigures(recipe),
  };
}

function noBoil(recipe: FieldCursor) {
  recipe.log.derive("A boil of 60 min, since the file states none.");
  return minutes(60);
}

function readEfficiency(efficiency: FieldCursor): Fraction | null {
  for (const part of ["conversion", "lauter", "mash"]) {
    efficiency.at(part).keep("follows from the kettle here; it is written back on export");
  }
  return takeMeasure(efficiency.at("brewhouse"), EFFICIENCY, PERCENT);
}

/** A step of the boil below boiling is the hop stand; the standard counts steps from 1. */
function readStand(recipe: FieldCursor): { readonly stand: HopStand | null; readonly standStep: number | null } {
  const steps = recipe.at("boil", "boil_steps").items;
  for (const [index, step] of steps.entries()) {
    const temperature = step.at("start_temperature");
    if (index === 0 || temperature.node === null) continue;
    const stand = step.log.whole(step.node ?? { line: 0, value: null }, () => {
      const at = takeMeasure(temperature, STAND_FIELDS.celsius, TEMPERATURE);
      const length = takeMeasure(step.at("step_time"), STAND_FIELDS.minutes, TIME);
      return at === null || length === null || (at >= 100 && step.at("name").text !== STAND_NAME)
        ? null
        : { celsius: at, minutes: length };
    });
    if (stand !== null) {
      step.at("name").take();
      step.at("end_temperature").keep("a stand holds its temperature here");
      return { stand, standStep: index + 1 };
    }
  }
  return { stand: null, standStep: null };
}

/** Steps that heat or infuse are rests; what drains or sparges is the kettle's own business. */
function readMash(mash: FieldCursor): Pick<StatedRecipe, "grain" | "thickness" | "mash"> {
  const steps = mash.at("mash_steps").items.flatMap((step) => {
    const { node } = step;
    const type = step.at("type").text ?? "";
    if (node === null) return [];
    if (!["infusion", "temperature", "decoction", "souring mash"].includes(type)) {
      step.keep("the sparge follows from the kettle here");
      return [];
    }
    const read = step.log.whole(node, () => {
      const at = takeMeasure(step.at("step_temperature"), MASH_STEP_FIELDS.celsius, TEMPERATURE);
      const length = takeMeasure(step.at("step_time"), MASH_STEP_FIELDS.minutes, TIME);
      return at === null || length === null ? null : { celsius: at, minutes: length };
    });
    if (read === null) return [];
    step.at("name").keep("rests have no names here");
    step.at("type").keep("every rest is reached by heating or infusion, as the kettle can");
    return [read];
  });
  const [first] = mash.at("mash_steps").items;
  return {
    grain: takeMeasure(mash.at("grain_temperature"), AMBIENT_FIELDS.grain, TEMPERATURE),
    thickness:
      first === undefined ? null : takeMeasure(first.at("water_grain_ratio"), RECIPE_FIELDS.thickness, THICKNESS),
    mash: steps,
  };
}

function readTemperature(recipe: FieldCursor): { readonly celsius?: Celsius } {
  const [first] = recipe.at("fermentation", "fermentation_steps").items;
  const found =
    first === undefined ? null : takeMeasure(first.at("start_temperature"), YEAST_FIELDS.celsius, TEMPERATURE);
  return found === null ? {} : { celsius: found };
}

function readStyle(style: FieldCursor): string | null {
  const name = style.at("name").text ?? "";
  const code = `${style.at("category_number").text ?? ""}${style.at("style_letter").text ?? ""}`;
  const found = styleNamed({ guide: style.at("style_guide").text ?? "", code, name });
  if (found === null) return null;
  for (const key of ["name", "category_number", "style_letter", "style_guide"]) {
    style.at(key).take(`the style ${found.code} of ${STYLE_GUIDE}`);
  }
  return found.code;
}

const bareCarbonation = measuredField("Carbonation", null, volumesCo2, PACKAGING_FIELDS.carbonation);

function readPackaging(recipe: FieldCursor): StatedRecipe["packaging"] {
  const [vessel] = recipe.at("packaging", "packaging_vessels").items;
  const bare = recipe.at("carbonation");
  const value = bare.node?.value;
  const carbonation =
    bare.node === null
      ? null
      : typeof value === "number"
        ? bare.takeQuantity(bareCarbonation, { ok: true, value, converted: false })
        : bare.refuse("it is not a number");
  const type = vessel?.at("type").text;
  const container =
    type === "bottle" ? "bottle" : type === "keg" || type === "cask" || type === "firkin" ? "keg" : null;
  if (container !== null) vessel?.at("type").take(type === container ? "" : `as ${container}`);
  const warmest =
    vessel === undefined ? null : takeMeasure(vessel.at("start_temperature"), PACKAGING_FIELDS.warmest, TEMPERATURE);
  return {
    ...(carbonation === null ? {} : { carbonation }),
    ...(container === null ? {} : { container, ...(container === "keg" ? { priming: null } : {}) }),
    ...(warmest === null ? {} : { warmest }),
  };
}

function readFigures(recipe: FieldCursor): StatedFigures {
  const alcohol = statedMeasure(recipe.at("alcohol_by_volume"), PERCENT);
  return {
    originalExtract: statedMeasure(recipe.at("original_gravity"), GRAVITY),
    finalExtract: statedMeasure(recipe.at("final_gravity"), GRAVITY),
    bitterness: statedMeasure(recipe.at("ibu_estimate", "value"), BITTERNESS),
    colour: statedMeasure(recipe.at("color_estimate"), COLOUR),
    alcohol: alcohol === null ? null : percent(Math.min(100, Math.max(0, 100 * alcohol))),
  };
}
