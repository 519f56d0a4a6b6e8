import { EXTRACT_RANGE, platoToSpecificGravity } from "@/lib/calc/gravity";
import type { Dimension } from "@/lib/calc/ledger";
import {
  bar,
  celsius,
  degreesPlato,
  ebc,
  fahrenheitFromCelsius,
  grams,
  kilograms,
  litres,
  litresPerKilogram,
  ouncesFromGrams,
  poundsFromKilograms,
  psiFromBar,
  quartsPerPoundFromLitresPerKilogram,
  srmFromEbc,
  usGallonsFromLitres,
} from "@/lib/calc/units";
import type { Preferences } from "@/lib/model/preferences";

/** How one dimension is shown to one person. */
export interface DisplayUnit {
  readonly unit: string;
  /** The unit as it is read aloud. */
  readonly spoken: string;
  /** Digits after the mark when nothing is known of the uncertainty. */
  readonly digits: number;
  readonly fromLibrary: (value: number) => number;
}

type Chooser = (preferences: Preferences) => DisplayUnit;

const same = (value: number): number => value;

/**
 * A linear conversion, its factor taken from the library. The library's own functions refuse what cannot be, but the
 * end of an interval may lie below nothing and still has to be printed.
 */
function scaled(factor: number, zero = 0): (value: number) => number {
  return (value) => zero + value * factor;
}

const FAHRENHEIT_AT_ZERO = fahrenheitFromCelsius(celsius(0));
const FAHRENHEIT_PER_CELSIUS = (fahrenheitFromCelsius(celsius(100)) - FAHRENHEIT_AT_ZERO) / 100;

function fixed(unit: string, spoken: string, digits: number, fromLibrary = same): Chooser {
  const display: DisplayUnit = { unit, spoken, digits, fromLibrary };
  return () => display;
}

function bySystem(metric: DisplayUnit, us: DisplayUnit): Chooser {
  return ({ units }) => (units === "us" ? us : metric);
}

const PLATO: DisplayUnit = { unit: "°P", spoken: "degrees Plato", digits: 1, fromLibrary: same };
const SPECIFIC_GRAVITY: DisplayUnit = {
  unit: "SG",
  spoken: "specific gravity",
  digits: 3,
  // The end of an interval may lie outside the scale, beyond the lightest beer or the strongest wort.
  fromLibrary: (value) =>
    platoToSpecificGravity(degreesPlato(Math.min(EXTRACT_RANGE.max, Math.max(EXTRACT_RANGE.min, value)))),
};
const EBC: DisplayUnit = { unit: "EBC", spoken: "EBC", digits: 0, fromLibrary: same };
const SRM: DisplayUnit = {
  unit: "SRM",
  spoken: "SRM",
  digits: 1,
  fromLibrary: scaled(srmFromEbc(ebc(1))),
};

const CHOOSERS: Readonly<Record<Dimension, Chooser>> = {
  volume: bySystem(
    { unit: "L", spoken: "litres", digits: 1, fromLibrary: same },
    { unit: "gal", spoken: "US gallons", digits: 2, fromLibrary: scaled(usGallonsFromLitres(litres(1))) },
  ),
  mass: bySystem(
    { unit: "kg", spoken: "kilograms", digits: 2, fromLibrary: same },
    { unit: "lb", spoken: "pounds", digits: 2, fromLibrary: scaled(poundsFromKilograms(kilograms(1))) },
  ),
  grams: bySystem(
    { unit: "g", spoken: "grams", digits: 1, fromLibrary: same },
    { unit: "oz", spoken: "ounces", digits: 2, fromLibrary: scaled(ouncesFromGrams(grams(1))) },
  ),
  temperature: bySystem(
    { unit: "°C", spoken: "degrees Celsius", digits: 1, fromLibrary: same },
    {
      unit: "°F",
      spoken: "degrees Fahrenheit",
      digits: 0,
      fromLibrary: scaled(FAHRENHEIT_PER_CELSIUS, FAHRENHEIT_AT_ZERO),
    },
  ),
  extract: ({ gravity }) => (gravity === "plato" ? PLATO : SPECIFIC_GRAVITY),
  colour: ({ colour }) => (colour === "srm" ? SRM : EBC),
  bitterness: fixed("IBU", "IBU", 1),
  minutes: fixed("min", "minutes", 0),
  power: fixed("W", "watts", 0),
  energy: fixed("kWh", "kilowatt hours", 1),
  concentration: fixed("mg/L", "milligrams per litre", 0),
  ph: fixed("pH", "pH", 2),
  fraction: fixed("%", "per cent", 1, (share) => share * 100),
  alcohol: fixed("% vol", "per cent by volume", 1),
  thickness: bySystem(
    { unit: "L/kg", spoken: "litres per kilogram", digits: 1, fromLibrary: same },
    {
      unit: "qt/lb",
      spoken: "US quarts per pound",
      digits: 2,
      fromLibrary: scaled(quartsPerPoundFromLitresPerKilogram(litresPerKilogram(1))),
    },
  ),
  cells: fixed("10⁹", "billion cells", 0),
  carbonation: fixed("vol", "volumes of carbon dioxide", 1),
  pressure: bySystem(
    { unit: "bar", spoken: "bar", digits: 2, fromLibrary: same },
    { unit: "psi", spoken: "pounds per square inch", digits: 1, fromLibrary: scaled(psiFromBar(bar(1))) },
  ),
  energyContent: fixed("kcal/L", "kilocalories per litre", 0),
  heatLoss: fixed("W/K", "watts per kelvin", 1),
  heatCapacity: fixed("J/K", "joules per kelvin", 0),
  evaporation: fixed("kg/h", "kilograms an hour", 2),
  points: fixed("points", "points", 1),
};

/** The unit in which somebody reads a dimension. */
export function displayUnit(dimension: Dimension, preferences: Preferences): DisplayUnit {
  return CHOOSERS[dimension](preferences);
}
