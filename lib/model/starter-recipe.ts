import type { Equipment } from "@/lib/calc/ledger";
import {
  celsius,
  grams,
  kilograms,
  litresPerKilogram,
  litres,
  milligramsPerLitre,
  millionPerMlPlato,
  minutes,
  volumesCo2,
} from "@/lib/calc/units";
import { USUAL_DAY } from "./ambient-fields";
import { HOP_VARIETIES } from "./hop-varieties";
import { TYPICAL_FERMENTABLES } from "./ingredients";
import type { RecipeContent } from "./recipe-content";
import { YEAST_CLASSES } from "./yeast-classes";

/** Grist and hops for a litre of an ordinary pale ale. Common practice, no source. */
const KG_PER_L = 0.21;
const HOP_G_PER_L = 1;

/**
 * Something to write over: an ordinary pale ale in the usual batch of a kettle, so that a new recipe has a ledger from
 * its first keystroke.
 */
export function starterRecipe(equipment: Equipment): RecipeContent {
  const batch = equipment.usualBatch;
  const [malt] = TYPICAL_FERMENTABLES.filter(({ name }) => name === "Pale ale malt");
  const [hop] = HOP_VARIETIES.filter(({ name }) => name === "Northern Brewer");
  const [yeast] = YEAST_CLASSES;
  if (malt === undefined || hop === undefined || yeast === undefined) throw new Error("the lists lack the usual malt");
  return {
    recipe: {
      intoFermenter: batch,
      topUp: litres(0),
      thickness: equipment.lauter.method === "none" ? null : litresPerKilogram(3),
      mash: [{ celsius: celsius(66), minutes: minutes(60) }],
      mashes: 1,
      boil: minutes(60),
      stand: null,
      fermentables: [{ ...malt, kg: kilograms(Number((KG_PER_L * batch).toPrecision(2))) }],
      hops: [
        {
          name: hop.name,
          grams: grams(Math.max(1, Math.round(HOP_G_PER_L * batch))),
          alpha: hop.alphaLow,
          use: "boil",
          minutes: minutes(60),
        },
      ],
      water: { source: WATER, salts: {}, acid: null },
      yeast: {
        name: yeast.name,
        attenuationLow: yeast.attenuationLow,
        attenuationHigh: yeast.attenuationHigh,
        pitch: millionPerMlPlato(0.75),
        celsius: celsius(19),
      },
      packaging: {
        container: "bottle",
        carbonation: volumesCo2(2.4),
        priming: "sucrose",
        warmest: celsius(20),
        rated: volumesCo2(3),
      },
    },
    entered: {},
    style: null,
    notes: "",
    writtenOn: { name: equipment.name, equipment, ambient: USUAL_DAY },
  };
}

/** An ordinary tap water, to be replaced by the water report. */
const WATER = {
  calcium: milligramsPerLitre(60),
  magnesium: milligramsPerLitre(8),
  sodium: milligramsPerLitre(15),
  sulfate: milligramsPerLitre(50),
  chloride: milligramsPerLitre(30),
  bicarbonate: milligramsPerLitre(150),
};
