import {
  celsius,
  ebc,
  fraction,
  grams,
  kilograms,
  litres,
  litresPerKilogram,
  milliequivalentsPerKilogramPh,
  milligramsPerLitre,
  millilitres,
  millionPerMlPlato,
  minutes,
  ph,
  volumesCo2,
} from "@/lib/calc/units";
import { measuredField } from "./field";

const ion = (label: string) => measuredField(label, "concentration", milligramsPerLitre, { min: 0, max: 3000 });
// Salts are weighed in grams everywhere: an ounce is too coarse for them.
const salt = (label: string) => measuredField(label, null, grams, { min: 0, max: 20000 });

/** Every number of a recipe. The schema and the form take name and range from here. */
export const RECIPE_FIELDS = {
  intoFermenter: measuredField("Volume into the fermenter", "volume", litres, { min: 0.3, max: 5000 }),
  topUp: measuredField("Water after the boil", "volume", litres, { min: 0, max: 5000 }),
  thickness: measuredField("Mash thickness", "thickness", litresPerKilogram, { min: 1.5, max: 12 }),
  boil: measuredField("Boil", "minutes", minutes, { min: 0, max: 600 }),
} as const;

export const MASH_STEP_FIELDS = {
  celsius: measuredField("Mash temperature", "temperature", celsius, { min: 10, max: 100 }),
  minutes: measuredField("Length of the rest", "minutes", minutes, { min: 0, max: 1440 }),
} as const;

export const STAND_FIELDS = {
  celsius: measuredField("Stand temperature", "temperature", celsius, { min: 30, max: 100 }),
  minutes: measuredField("Length of the stand", "minutes", minutes, { min: 0, max: 240 }),
} as const;

export const FERMENTABLE_FIELDS = {
  kg: measuredField("Amount", "mass", kilograms, { min: 0.001, max: 5000 }),
  extract: measuredField("Extract yield", "fraction", fraction, { min: 0.01, max: 1 }),
  moisture: measuredField("Moisture", "fraction", fraction, { min: 0, max: 0.9 }),
  colour: measuredField("Malt colour", "colour", ebc, { min: 0, max: 2500 }),
  fermentability: measuredField("Fermentability", "fraction", fraction),
  distilledWaterPh: measuredField("Distilled-water pH", "ph", ph, { min: 3.2, max: 7.5 }),
  buffering: measuredField("Buffering", null, milliequivalentsPerKilogramPh, { min: 0, max: 200 }),
  lacticFraction: measuredField("Lactic acid", "fraction", fraction, { min: 0, max: 0.1 }),
} as const;

export const HOP_FIELDS = {
  grams: measuredField("Amount", "grams", grams, { min: 0.1, max: 500000 }),
  alpha: measuredField("Alpha acids", "fraction", fraction, { min: 0, max: 0.3 }),
  minutes: measuredField("Hop time", "minutes", minutes, { min: 0, max: 600 }),
} as const;

export const ION_FIELDS = {
  calcium: ion("Calcium"),
  magnesium: ion("Magnesium"),
  sodium: ion("Sodium"),
  sulfate: ion("Sulfate"),
  chloride: ion("Chloride"),
  bicarbonate: ion("Bicarbonate"),
} as const;

export const SALT_FIELDS = {
  gypsum: salt("Gypsum"),
  calciumChlorideDihydrate: salt("Calcium chloride"),
  epsomSalt: salt("Epsom salt"),
  tableSalt: salt("Table salt"),
  bakingSoda: salt("Baking soda"),
  chalk: salt("Chalk"),
  slakedLime: salt("Slaked lime"),
} as const;

// Acids are measured with a syringe, in millilitres everywhere.
export const ACID_FIELDS = {
  ml: measuredField("Acid in the mash water", null, millilitres, { min: 0, max: 20000 }),
} as const;

export const YEAST_FIELDS = {
  attenuationLow: measuredField("Attenuation, low", "fraction", fraction, { min: 0.3, max: 1 }),
  attenuationHigh: measuredField("Attenuation, high", "fraction", fraction, { min: 0.3, max: 1 }),
  pitch: measuredField("Pitch rate", null, millionPerMlPlato, { min: 0.01, max: 5 }),
  celsius: measuredField("Fermentation temperature", "temperature", celsius, { min: 0, max: 45 }),
} as const;

export const PACKAGING_FIELDS = {
  carbonation: measuredField("Carbonation", "carbonation", volumesCo2, { min: 0, max: 6 }),
  warmest: measuredField("Warmest temperature since fermentation", "temperature", celsius, { min: -2, max: 45 }),
  rated: measuredField("Carbonation that the container is made for", "carbonation", volumesCo2, { min: 1, max: 10 }),
} as const;
