import type { Fermentable, HopAddition, Packaging, Recipe, Yeast } from "@/lib/calc/ledger";
import {
  celsius,
  fraction,
  grams,
  kilograms,
  litres,
  litresPerKilogram,
  milligramsPerLitre,
  millionPerMlPlato,
  minutes,
  volumesCo2,
} from "@/lib/calc/units";
import { TYPICAL_FERMENTABLES } from "@/lib/model/ingredients";
import { YEAST_CLASSES } from "@/lib/model/yeast-classes";

/** Invented recipes of the demo club, written for the organiser's kettle. */
export interface DemoRecipe {
  readonly key: "pale ale" | "barley wine" | "porter" | "lager";
  readonly author: string;
  readonly title: string;
  readonly style: string;
  readonly notes: string;
  readonly recipe: Recipe;
}

const WATER = {
  calcium: milligramsPerLitre(42),
  magnesium: milligramsPerLitre(6),
  sodium: milligramsPerLitre(14),
  sulfate: milligramsPerLitre(32),
  chloride: milligramsPerLitre(22),
  bicarbonate: milligramsPerLitre(112),
};

function fermentable(name: string, kg: number, station: Fermentable["station"] = "mash"): Fermentable {
  const typical = TYPICAL_FERMENTABLES.find((each) => each.name === name);
  if (typical === undefined) throw new Error(`the demo uses an ingredient that is not in the list: ${name}`);
  return { ...typical, station, kg: kilograms(kg) };
}

function hop(name: string, g: number, alpha: number, use: HopAddition["use"], min: number): HopAddition {
  return { name, grams: grams(g), alpha: fraction(alpha), use, minutes: minutes(min) };
}

function yeast(name: string, pitch: number, atC: number): Yeast {
  const found = YEAST_CLASSES.find((each) => each.name === name);
  if (found === undefined) throw new Error(`the demo uses a yeast that is not in the list: ${name}`);
  const { attenuationLow, attenuationHigh } = found;
  return { name, attenuationLow, attenuationHigh, pitch: millionPerMlPlato(pitch), celsius: celsius(atC) };
}

function bottled(volumes: number, warmest: number): Packaging {
  return {
    container: "bottle",
    carbonation: volumesCo2(volumes),
    priming: "sucrose",
    warmest: celsius(warmest),
    rated: volumesCo2(3),
  };
}

const rest = (atC: number, min: number): Recipe["mash"][number] => ({ celsius: celsius(atC), minutes: minutes(min) });

const COMMON = {
  intoFermenter: litres(21),
  topUp: litres(0),
  thickness: litresPerKilogram(3),
  mashes: 1,
  boil: minutes(60),
  stand: null,
} as const;

const PALE_ALE: Recipe = {
  ...COMMON,
  mash: [rest(66, 60), rest(76, 10)],
  stand: { celsius: celsius(80), minutes: minutes(20) },
  fermentables: [
    fermentable("Pale ale malt", 4.3),
    fermentable("Munich malt light", 0.4),
    fermentable("Caramel malt 20L", 0.2),
  ],
  hops: [
    hop("Magnum", 21, 0.13, "boil", 60),
    hop("Cascade", 20, 0.066, "boil", 10),
    hop("Cascade", 50, 0.066, "stand", 20),
    hop("Cascade", 60, 0.066, "dry", 0),
  ],
  water: { source: WATER, salts: { gypsum: grams(5), calciumChlorideDihydrate: grams(2) }, acid: null },
  yeast: yeast("American ale, clean", 0.75, 19),
  packaging: bottled(2.4, 20),
};

const BARLEY_WINE: Recipe = {
  ...COMMON,
  intoFermenter: litres(13),
  thickness: litresPerKilogram(2.4),
  mash: [rest(65, 75), rest(76, 10)],
  boil: minutes(90),
  fermentables: [
    fermentable("Pale ale malt heritage winter barley", 6.4),
    fermentable("Caramel malt 60L", 0.25),
    fermentable("Sucrose", 0.3, "kettle"),
  ],
  hops: [hop("Target", 40, 0.11, "boil", 60), hop("East Kent Golding", 40, 0.055, "boil", 15)],
  water: { source: WATER, salts: { gypsum: grams(2), calciumChlorideDihydrate: grams(4) }, acid: null },
  yeast: yeast("English ale, dry", 1, 18),
  packaging: bottled(2, 19),
};

const PORTER: Recipe = {
  ...COMMON,
  mash: [rest(68, 60), rest(76, 10)],
  fermentables: [
    fermentable("Mild ale malt", 3.5),
    fermentable("Brown malt", 0.5),
    fermentable("Caramel malt 60L", 0.25),
    fermentable("Chocolate malt", 0.28),
  ],
  hops: [hop("Northdown", 25, 0.08, "boil", 60), hop("Fuggle", 25, 0.045, "boil", 10)],
  water: { source: WATER, salts: { calciumChlorideDihydrate: grams(4), bakingSoda: grams(2) }, acid: null },
  yeast: yeast("English ale, dry", 0.75, 19),
  packaging: bottled(2.1, 19),
};

const LAGER: Recipe = {
  ...COMMON,
  mash: [rest(63, 40), rest(72, 25), rest(77, 5)],
  boil: minutes(75),
  fermentables: [fermentable("Pilsner malt", 4.2), fermentable("Dextrin malt", 0.15)],
  hops: [
    hop("Perle", 24, 0.07, "boil", 60),
    hop("Hallertau Mittelfrueh", 30, 0.042, "boil", 20),
    hop("Hallertau Mittelfrueh", 30, 0.042, "boil", 0),
  ],
  water: { source: WATER, salts: { calciumChlorideDihydrate: grams(3) }, acid: null },
  yeast: yeast("German lager", 1.5, 10),
  packaging: bottled(2.5, 12),
};

export const DEMO_RECIPES: readonly DemoRecipe[] = [
  {
    key: "pale ale",
    author: "organiser",
    title: "Millrace Pale Ale",
    style: "18B",
    notes: "Invented for the demo. The stand at 80 °C carries the aroma; keep it short.",
    recipe: PALE_ALE,
  },
  {
    key: "barley wine",
    author: "member",
    title: "Old Hundredweight",
    style: "17D",
    notes: "Invented for the demo. Strong: small baskets do not hold the grist.",
    recipe: BARLEY_WINE,
  },
  {
    key: "porter",
    author: "tamsin",
    title: "Coal Quay Porter",
    style: "13C",
    notes: "Invented for the demo. Bicarbonate is added because the dark malts bring acid.",
    recipe: PORTER,
  },
  {
    key: "lager",
    author: "ivo",
    title: "Hollowmere Pils",
    style: "5D",
    notes: "Invented for the demo. Pitch cold, raise the temperature for the last third.",
    recipe: LAGER,
  },
];
