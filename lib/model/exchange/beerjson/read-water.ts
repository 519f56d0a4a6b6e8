import { litres } from "@/lib/calc/units";
import { IONS, type Ions } from "@/lib/calc/water";
import { ION_FIELDS, RECIPE_FIELDS } from "../../recipe-fields";
import type { FieldCursor } from "../field-cursor";
import type { StatedRecipe } from "../stated-recipe";
import { takeMeasure } from "./measure";
import { CONCENTRATION, VOLUME } from "./units";

/** The name under which this book writes the water after the boil, which the standard has no field for. */
export const TOP_UP_NAME = "Water after the boil";

/** The first water is what the recipe is brewed with; further ones are kept. */
export function readWater(additions: FieldCursor): Pick<StatedRecipe, "water" | "topUp"> {
  const [source] = additions.items.filter((row) => row.at("name").text !== TOP_UP_NAME);
  const [topUp] = additions.items.filter((row) => row.at("name").text === TOP_UP_NAME);
  const amount = topUp === undefined ? null : takeMeasure(topUp.at("amount"), RECIPE_FIELDS.topUp, VOLUME);
  if (amount !== null) {
    topUp?.at("name").take();
    for (const ion of IONS) topUp?.at(ion).keep("all the water of a recipe has one analysis here");
  }
  return { water: source === undefined ? null : readIons(source), topUp: amount ?? litres(0) };
}

function readIons(source: FieldCursor): Ions | null {
  const { node } = source;
  if (node === null) return null;
  return source.log.whole(node, () => {
    const calcium = takeMeasure(source.at("calcium"), ION_FIELDS.calcium, CONCENTRATION);
    const magnesium = takeMeasure(source.at("magnesium"), ION_FIELDS.magnesium, CONCENTRATION);
    const sodium = takeMeasure(source.at("sodium"), ION_FIELDS.sodium, CONCENTRATION);
    const sulfate = takeMeasure(source.at("sulfate"), ION_FIELDS.sulfate, CONCENTRATION);
    const chloride = takeMeasure(source.at("chloride"), ION_FIELDS.chloride, CONCENTRATION);
    const bicarbonate = takeMeasure(source.at("bicarbonate"), ION_FIELDS.bicarbonate, CONCENTRATION);
    if (calcium === null || magnesium === null || sodium === null) return null;
    if (sulfate === null || chloride === null || bicarbonate === null) return null;
    return { calcium, magnesium, sodium, sulfate, chloride, bicarbonate };
  });
}
