import { specificGravityToPlato } from "@/lib/calc/gravity";
import type { Dimension } from "@/lib/calc/ledger";
import {
  barFromPsi,
  celsiusFromFahrenheit,
  ebcFromSrm,
  fahrenheit,
  gramsFromOunces,
  kilogramsFromPounds,
  litresFromUsFluidOunces,
  litresFromUsGallons,
  litresFromUsQuarts,
  litresPerKilogramFromQuartsPerPound,
  lovibond,
  ounces,
  pounds,
  psi,
  quartsPerPound,
  specificGravity,
  srm,
  srmFromLovibond,
  usFluidOunces,
  usGallons,
  usQuarts,
} from "@/lib/calc/units";

/** Turns a typed number of one unit into the library's unit. */
export type ToLibrary = (value: number) => number;

type Spellings = readonly (readonly [spellings: readonly string[], toLibrary: ToLibrary])[];

const same: ToLibrary = (value) => value;
const times =
  (factor: number): ToLibrary =>
  (value) =>
    value * factor;

const GRAMS: Spellings = [
  [["g", "gram", "grams"], same],
  [["kg", "kilogram", "kilograms"], times(1000)],
  [["oz", "ounce", "ounces"], (value) => gramsFromOunces(ounces(value))],
  [["lb", "lbs", "pound", "pounds"], (value) => kilogramsFromPounds(pounds(value)) * 1000],
];

const PERCENT: Spellings = [[["%", "per cent", "percent"], times(0.01)]];

/** Every spelling that is understood, by dimension; capitals do not matter. */
const UNITS: Readonly<Record<Dimension, Spellings>> = {
  volume: [
    [["L", "litre", "litres", "liter", "liters"], same],
    [["mL", "millilitre", "millilitres"], times(0.001)],
    [["gal", "gallon", "gallons", "us gal"], (value) => litresFromUsGallons(usGallons(value))],
    [["qt", "quart", "quarts"], (value) => litresFromUsQuarts(usQuarts(value))],
    [["fl oz", "fluid ounces"], (value) => litresFromUsFluidOunces(usFluidOunces(value))],
  ],
  mass: GRAMS.map(([spellings, toGrams]) => [spellings, (value: number) => toGrams(value) / 1000] as const),
  grams: GRAMS,
  temperature: [
    [["°C", "c", "celsius"], same],
    [["°F", "f", "fahrenheit"], (value) => celsiusFromFahrenheit(fahrenheit(value))],
  ],
  extract: [
    [["°P", "p", "plato", "degrees plato"], same],
    [["SG", "specific gravity"], (value) => specificGravityToPlato(specificGravity(value))],
  ],
  colour: [
    [["EBC"], same],
    [["SRM"], (value) => ebcFromSrm(srm(value))],
    [["°L", "lovibond"], (value) => ebcFromSrm(srmFromLovibond(lovibond(value)))],
  ],
  bitterness: [[["IBU", "ebu", "bu"], same]],
  minutes: [
    [["min", "mins", "minute", "minutes", "m"], same],
    [["h", "hour", "hours"], times(60)],
    [["s", "second", "seconds"], times(1 / 60)],
  ],
  power: [
    [["W", "watt", "watts"], same],
    [["kW", "kilowatt", "kilowatts"], times(1000)],
  ],
  energy: [[["kWh"], same]],
  concentration: [[["mg/L", "ppm"], same]],
  ph: [[["pH"], same]],
  fraction: PERCENT,
  alcohol: [[["%", "% vol", "per cent", "percent"], same]],
  thickness: [
    [["L/kg"], same],
    [["qt/lb"], (value) => litresPerKilogramFromQuartsPerPound(quartsPerPound(value))],
  ],
  cells: [[["10⁹", "billion", "billion cells"], same]],
  carbonation: [[["vol", "volumes", "volume"], same]],
  pressure: [
    [["bar"], same],
    [["psi"], (value) => barFromPsi(psi(value))],
    [["kPa"], times(0.01)],
  ],
  energyContent: [[["kcal/L"], same]],
  heatLoss: [[["W/K"], same]],
  heatCapacity: [[["J/K"], same]],
  evaporation: [[["kg/h"], same]],
  points: [[["points"], same]],
};

/** How a unit written by a person converts; null when it is no unit of this dimension. */
export function amountUnit(dimension: Dimension, written: string): ToLibrary | null {
  const wanted = written.toLowerCase().replaceAll(/\s+/g, " ").trim();
  return (
    UNITS[dimension].find(([spellings]) => spellings.some((spelling) => spelling.toLowerCase() === wanted))?.[1] ?? null
  );
}

/** One spelling of each unit of a dimension, for a message. */
export function knownUnits(dimension: Dimension): readonly string[] {
  return UNITS[dimension].flatMap(([spellings]) => spellings.slice(0, 1));
}
