import {
  celsiusFromFahrenheit,
  ebcFromSrm,
  fahrenheit,
  gramsFromOunces,
  imperialGallons,
  kilogramsFromPounds,
  litresFromImperialGallons,
  litresFromUsFluidOunces,
  litresFromUsGallons,
  litresFromUsQuarts,
  litresPerKilogramFromQuartsPerPound,
  lovibond,
  ounces,
  pounds,
  quartsPerPound,
  srm,
  srmFromLovibond,
  usFluidOunces,
  usGallons,
  usQuarts,
  degreesPlato,
  specificGravity,
} from "@/lib/calc/units";
import { specificGravityToPlato } from "@/lib/calc/gravity";

/** Brings a number in one of the standard's units to this book's. */
export type UnitTable = Readonly<Record<string, (value: number) => number>>;

const gallons = (value: number): number => litresFromUsGallons(usGallons(value));
const fluidOunces = (value: number): number => litresFromUsFluidOunces(usFluidOunces(value));
const imperial = (value: number): number => litresFromImperialGallons(imperialGallons(value));

/** Litres. Spoons, cups and pints are parts of the gallon, barrels of beer 31 US or 36 imperial gallons. */
export const VOLUME: UnitTable = {
  l: (value) => value,
  ml: (value) => value / 1000,
  gal: gallons,
  qt: (value) => litresFromUsQuarts(usQuarts(value)),
  pt: (value) => gallons(value / 8),
  cup: (value) => gallons(value / 16),
  floz: fluidOunces,
  tbsp: (value) => fluidOunces(value / 2),
  tsp: (value) => fluidOunces(value / 6),
  bbl: (value) => gallons(31 * value),
  igal: imperial,
  iqt: (value) => imperial(value / 4),
  ipt: (value) => imperial(value / 8),
  ifloz: (value) => imperial(value / 160),
  ibbl: (value) => imperial(36 * value),
};

/** Kilograms. */
export const MASS: UnitTable = {
  kg: (value) => value,
  g: (value) => value / 1000,
  mg: (value) => value / 1e6,
  lb: (value) => kilogramsFromPounds(pounds(value)),
  oz: (value) => gramsFromOunces(ounces(value)) / 1000,
};

/** Grams, without the detour that would cost a digit. */
export const SMALL_MASS: UnitTable = {
  kg: (value) => 1000 * value,
  g: (value) => value,
  mg: (value) => value / 1000,
  lb: (value) => 1000 * kilogramsFromPounds(pounds(value)),
  oz: (value) => gramsFromOunces(ounces(value)),
};

/** °C. */
export const TEMPERATURE: UnitTable = {
  C: (value) => value,
  F: (value) => celsiusFromFahrenheit(fahrenheit(value)),
};

/** Minutes. */
export const TIME: UnitTable = {
  min: (value) => value,
  sec: (value) => value / 60,
  hr: (value) => 60 * value,
  day: (value) => 1440 * value,
  week: (value) => 10080 * value,
};

/** EBC, of malt and of beer. */
export const COLOUR: UnitTable = {
  EBC: (value) => value,
  SRM: (value) => ebcFromSrm(srm(value)),
  Lovi: (value) => ebcFromSrm(srmFromLovibond(lovibond(value))),
};

/** mg/L; the standard takes a million parts as a litre of water. */
export const CONCENTRATION: UnitTable = {
  "mg/l": (value) => value,
  ppm: (value) => value,
  ppb: (value) => value / 1000,
};

/** L/kg. */
export const THICKNESS: UnitTable = {
  "l/kg": (value) => value,
  "l/g": (value) => 1000 * value,
  "m^3/kg": (value) => 1000 * value,
  "qt/lb": (value) => litresPerKilogramFromQuartsPerPound(quartsPerPound(value)),
  "gal/lb": (value) => litresPerKilogramFromQuartsPerPound(quartsPerPound(4 * value)),
  "gal/oz": (value) => litresPerKilogramFromQuartsPerPound(quartsPerPound(64 * value)),
  "floz/oz": (value) => fluidOunces(value) / (gramsFromOunces(ounces(1)) / 1000),
};

/** °P; Brix and Plato are the same table of sucrose. */
export const GRAVITY: UnitTable = {
  plato: (value) => degreesPlato(value),
  brix: (value) => degreesPlato(value),
  sg: (value) => specificGravityToPlato(specificGravity(value)),
};

/** A fraction. */
export const PERCENT: UnitTable = { "%": (value) => value / 100 };

export const BITTERNESS: UnitTable = { IBUs: (value) => value };
