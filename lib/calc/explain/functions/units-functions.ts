import * as units from "../../units";
import type { SourceAnchor } from "../source-titles";
import { acceptedSpan, type Convert, type Maker } from "./accepted-span";
import type { FunctionRecord } from "./function-record";

/** A conversion and its inverse: names, units, what it multiplies by, and an example either way. */
interface Pair {
  readonly what: string;
  readonly us: Maker;
  readonly metric: Maker;
  readonly toMetric: readonly [name: string, convert: Convert, equation: string, example: number];
  readonly toUs: readonly [name: string, convert: Convert, equation: string, example: number];
  readonly sources: readonly SourceAnchor[];
  readonly words: string;
}

const EXACT = "The factor is exact by definition, so a round trip gives the number back to its last digits.";
const nist: readonly SourceAnchor[] = ["nist-sp-811"];

const PAIRS: readonly Pair[] = [
  {
    what: "volume",
    us: units.usGallons,
    metric: units.litres,
    sources: nist,
    words: `US gallons; the imperial gallon is a fifth larger. ${EXACT}`,
    toMetric: ["litresFromUsGallons", units.litresFromUsGallons, "L = gal × 3.785411784", 5],
    toUs: ["usGallonsFromLitres", units.usGallonsFromLitres, "gal = L / 3.785411784", 20],
  },
  {
    what: "volume",
    us: units.imperialGallons,
    metric: units.litres,
    sources: nist,
    words: `Imperial gallons, a fifth larger than those of the US. ${EXACT}`,
    toMetric: ["litresFromImperialGallons", units.litresFromImperialGallons, "L = imp gal × 4.54609", 5],
    toUs: ["imperialGallonsFromLitres", units.imperialGallonsFromLitres, "imp gal = L / 4.54609", 20],
  },
  {
    what: "volume",
    us: units.usQuarts,
    metric: units.litres,
    sources: nist,
    words: `US quarts, four to the US gallon. ${EXACT}`,
    toMetric: ["litresFromUsQuarts", units.litresFromUsQuarts, "L = qt × 3.785411784 / 4", 2],
    toUs: ["usQuartsFromLitres", units.usQuartsFromLitres, "qt = 4 L / 3.785411784", 2],
  },
  {
    what: "volume",
    us: units.usFluidOunces,
    metric: units.litres,
    sources: nist,
    words: `US fluid ounces, 128 to the US gallon; they measure volume, not mass. ${EXACT}`,
    toMetric: ["litresFromUsFluidOunces", units.litresFromUsFluidOunces, "L = fl oz × 3.785411784 / 128", 12],
    toUs: ["usFluidOuncesFromLitres", units.usFluidOuncesFromLitres, "fl oz = 128 L / 3.785411784", 0.5],
  },
  {
    what: "mass",
    us: units.pounds,
    metric: units.kilograms,
    sources: nist,
    words: `Pounds of mass. ${EXACT}`,
    toMetric: ["kilogramsFromPounds", units.kilogramsFromPounds, "kg = lb × 0.45359237", 10],
    toUs: ["poundsFromKilograms", units.poundsFromKilograms, "lb = kg / 0.45359237", 5],
  },
  {
    what: "mass",
    us: units.ounces,
    metric: units.grams,
    sources: nist,
    words: `Ounces of mass, sixteen to the pound. ${EXACT}`,
    toMetric: ["gramsFromOunces", units.gramsFromOunces, "g = oz × 453.59237 / 16", 1],
    toUs: ["ouncesFromGrams", units.ouncesFromGrams, "oz = 16 g / 453.59237", 30],
  },
  {
    what: "temperature",
    us: units.fahrenheit,
    metric: units.celsius,
    sources: nist,
    words: `Temperatures, not differences of them: a rise of 1 °C is a rise of 1.8 °F. ${EXACT}`,
    toMetric: ["celsiusFromFahrenheit", units.celsiusFromFahrenheit, "°C = (°F − 32) / 1.8", 152],
    toUs: ["fahrenheitFromCelsius", units.fahrenheitFromCelsius, "°F = 1.8 °C + 32", 67],
  },
  {
    what: "altitude",
    us: units.feet,
    metric: units.metres,
    sources: nist,
    words: `International feet. ${EXACT}`,
    toMetric: ["metresFromFeet", units.metresFromFeet, "m = ft × 0.3048", 5280],
    toUs: ["feetFromMetres", units.feetFromMetres, "ft = m / 0.3048", 500],
  },
  {
    what: "absolute pressure",
    us: units.psi,
    metric: units.kilopascals,
    sources: nist,
    words: `Absolute pressure, which is above zero; a gauge shows what is above the air, and that goes between psi and bar. ${EXACT}`,
    toMetric: [
      "kilopascalsFromPsi",
      units.kilopascalsFromPsi,
      "kPa = psi × 0.45359237 × 9.80665 / 0.0254² / 1000",
      14.7,
    ],
    toUs: [
      "psiFromKilopascals",
      units.psiFromKilopascals,
      "psi = kPa × 1000 × 0.0254² / (0.45359237 × 9.80665)",
      101.325,
    ],
  },
  {
    what: "gauge pressure",
    us: units.psi,
    metric: units.bar,
    sources: nist,
    words: `Gauge pressure: what is above the air around, below zero for a vacuum. ${EXACT}`,
    toMetric: ["barFromPsi", units.barFromPsi, "bar = psi × 0.45359237 × 9.80665 / 0.0254² / 100000", 12],
    toUs: ["psiFromBar", units.psiFromBar, "psi = bar × 100000 × 0.0254² / (0.45359237 × 9.80665)", 1],
  },
  {
    what: "mash thickness",
    us: units.quartsPerPound,
    metric: units.litresPerKilogram,
    sources: nist,
    words: `Water for the grist in US quarts to the pound. ${EXACT}`,
    toMetric: [
      "litresPerKilogramFromQuartsPerPound",
      units.litresPerKilogramFromQuartsPerPound,
      "L/kg = qt/lb × 3.785411784 / (4 × 0.45359237)",
      1.5,
    ],
    toUs: [
      "quartsPerPoundFromLitresPerKilogram",
      units.quartsPerPoundFromLitresPerKilogram,
      "qt/lb = L/kg × 4 × 0.45359237 / 3.785411784",
      3,
    ],
  },
  {
    what: "mass in a volume",
    us: units.ouncesPerUsGallon,
    metric: units.gramsPerLitre,
    sources: nist,
    words: `Ounces in the US gallon, as US recipes give hops. ${EXACT}`,
    toMetric: [
      "gramsPerLitreFromOuncesPerUsGallon",
      units.gramsPerLitreFromOuncesPerUsGallon,
      "g/L = oz/gal × 453.59237 / (16 × 3.785411784)",
      0.5,
    ],
    toUs: [
      "ouncesPerUsGallonFromGramsPerLitre",
      units.ouncesPerUsGallonFromGramsPerLitre,
      "oz/gal = g/L × 16 × 3.785411784 / 453.59237",
      5,
    ],
  },
  {
    what: "flow",
    us: units.usGallonsPerMinute,
    metric: units.litresPerMinute,
    sources: nist,
    words: `US gallons in a minute. ${EXACT}`,
    toMetric: [
      "litresPerMinuteFromUsGallonsPerMinute",
      units.litresPerMinuteFromUsGallonsPerMinute,
      "L/min = gal/min × 3.785411784",
      2,
    ],
    toUs: [
      "usGallonsPerMinuteFromLitresPerMinute",
      units.usGallonsPerMinuteFromLitresPerMinute,
      "gal/min = L/min / 3.785411784",
      8,
    ],
  },
  {
    what: "colour of beer",
    us: units.srm,
    metric: units.ebc,
    sources: ["ebc-analytica", "asbc-beer-10a"],
    words:
      "Both scales are the absorbance at 430 nm in 1 cm times a number, 12.7 for SRM and 25 for EBC. The trade rounds the ratio to 1.97, which differs by less than a thousandth.",
    toMetric: ["ebcFromSrm", units.ebcFromSrm, "EBC = SRM × 25 / 12.7", 10],
    toUs: ["srmFromEbc", units.srmFromEbc, "SRM = EBC × 12.7 / 25", 20],
  },
  {
    what: "colour of malt",
    us: units.lovibond,
    metric: units.srm,
    sources: ["trade-practice"],
    words:
      "Malt is graded in Lovibond, its laboratory wort in SRM. The straight line between them is common practice without a source; it runs below zero under 0.56 °L, and that counts as no colour.",
    toMetric: ["srmFromLovibond", units.srmFromLovibond, "SRM = 1.3546 °L − 0.76, at least 0", 60],
    toUs: ["lovibondFromSrm", units.lovibondFromSrm, "°L = (SRM + 0.76) / 1.3546", 10],
  },
];

const toRecord = (
  { what, sources, words }: Pair,
  [name, call, equation, example]: Pair["toUs"],
  from: Maker,
  to: Maker,
): FunctionRecord => ({
  id: `units/${name}`,
  words: `Converts the ${what} from ${from.range.unit} to ${to.range.unit}. ${words}`,
  equation,
  inputs: [{ at: "0", label: capital(what), ...acceptedSpan(call, example, from, to) }],
  gives: `${what}, ${to.range.unit}`,
  sources,
  validRange: `${span(from)}, as far as the result lies in ${span(to)}.`,
  call,
  example: [example],
});

const span = ({ range: { unit, min, max } }: Maker): string => `${String(min)} to ${String(max)} ${unit}`;
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const DEFINE_QUANTITY: FunctionRecord = {
  id: "units/defineQuantity",
  words:
    "Defines a unit: it hands out a function that checks a number against the span in which the quantity is possible and marks it with its unit, so that a gravity cannot stand where an extract is wanted. The mark is for the compiler; at run time the number stays a number. The span also limits what forms take.",
  equation: "the number itself, where min ≤ number ≤ max",
  inputs: [],
  gives: "a maker of quantities, with its range",
  sources: ["nist-sp-811"],
  validRange: "Any span; what the maker is given must lie in it.",
  call: units.defineQuantity,
  example: ["temperature", { unit: "°C", min: -30, max: 130 }],
};

/** How the conversions of units are explained. */
export const UNITS_FUNCTIONS: readonly FunctionRecord[] = [
  DEFINE_QUANTITY,
  ...PAIRS.flatMap((pair) => [
    toRecord(pair, pair.toMetric, pair.us, pair.metric),
    toRecord(pair, pair.toUs, pair.metric, pair.us),
  ]),
];
