import {
  BEER_COLOUR_RANGE,
  beerLab,
  beerSrgb,
  beerTransmission,
  colourDifference,
  DANIELS_RANGE,
  danielsSrm,
  LAB_RANGE,
  maltColourUnits,
  MOREY_RANGE,
  moreySrm,
  MOSHER_RANGE,
  mosherSrm,
} from "../../colour";
import { VOLUME_RANGE } from "../../colour/malt-colour-units";
import { kilograms, lovibond } from "../../units";
import type { FunctionInput, FunctionRecord } from "./function-record";

const beer: FunctionInput = { at: "0.srm", label: "Colour of the beer", ...BEER_COLOUR_RANGE.srm };
const path = (at: string): FunctionInput => ({ at, label: "Glass it is seen through", ...BEER_COLOUR_RANGE.cm });
const labOf = (at: string, which: string): readonly FunctionInput[] => [
  { at: `${at}.lightness`, label: `Lightness of the ${which}`, ...LAB_RANGE.lightness },
  { at: `${at}.a`, label: `a of the ${which}`, ...LAB_RANGE.chroma },
  { at: `${at}.b`, label: `b of the ${which}`, ...LAB_RANGE.chroma },
];

/** How the functions of colour are explained. */
export const COLOUR_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "colour/maltColourUnits",
    words:
      "The colour that a grist brings, in the US unit of the formulas for beer colour: pounds times Lovibond in a US gallon of wort. It is a sum of what malts bring, not the colour of the wort, which grows more slowly.",
    equation: "units = 8.3454 × Σ (kg × °L) / litres",
    inputs: [
      { at: "0.malts.0.kg", label: "Malt", ...kilograms.range },
      { at: "0.malts.0.lovibond", label: "Its colour", ...lovibond.range },
      { at: "0.malts.1.kg", label: "Another malt", ...kilograms.range },
      { at: "0.malts.1.lovibond", label: "Its colour", ...lovibond.range },
      { at: "0.litres", label: "Wort", ...VOLUME_RANGE },
    ],
    gives: "malt colour units, °L·lb/US gal",
    sources: ["nist-sp-811"],
    validRange: "0.1 to 100 000 L, up to 100 000 units.",
    call: maltColourUnits,
    example: [
      {
        malts: [
          { kg: 5, lovibond: 4 },
          { kg: 0.2, lovibond: 60 },
        ],
        litres: 20,
      },
    ],
  },
  {
    id: "colour/moreySrm",
    words:
      "The colour of beer from its malt colour units by Morey's power law, the relation of record here: alone of the three in use it starts at nothing and flattens with dark malt. It scatters by a fifth; how long the wort boils and how much air it takes up is not counted. Above 50 SRM it is good for no more than “black”.",
    equation: "SRM = 1.4922 × units^0.6859",
    inputs: [{ at: "0", label: "Malt colour units", ...MOREY_RANGE }],
    gives: "colour, SRM",
    sources: ["morey-1995", "trade-practice"],
    validRange: "0 to 1000 units; drawn up to 167, which is 50 SRM.",
    call: moreySrm,
    example: [20],
  },
  {
    id: "colour/danielsSrm",
    words:
      "The colour of beer by Daniels' straight line, offered by name for comparison. It gives 8 SRM to water, so pale grists are refused; between 15 and 35 units it is within 2 SRM of Morey's law.",
    equation: "SRM = 0.2 × units + 8.4",
    inputs: [{ at: "0", label: "Malt colour units", ...DANIELS_RANGE }],
    gives: "colour, SRM",
    sources: ["daniels-2000"],
    validRange: "11 to 200 units.",
    call: danielsSrm,
    example: [20],
  },
  {
    id: "colour/mosherSrm",
    words:
      "The colour of beer by Mosher's straight line, offered by name for comparison. It gives 5 SRM to water, so very pale grists are refused; between 10 and 35 units it is within 2 SRM of Morey's law.",
    equation: "SRM = 0.3 × units + 4.7",
    inputs: [{ at: "0", label: "Malt colour units", ...MOSHER_RANGE }],
    gives: "colour, SRM",
    sources: ["mosher-1995"],
    validRange: "7 to 200 units.",
    call: mosherSrm,
    example: [20],
  },
  {
    id: "colour/beerTransmission",
    words:
      "The share of light of one wavelength that passes clear beer. Spectra of malt beers nearly coincide when divided by their colour, so one average serves; fruit and haze have others. Colour and path count only as their product: 4 SRM through 5 cm look like 20 SRM through 1 cm.",
    equation: "T = 10^(−SRM / 12.7 × cm × (0.02465 e^((430 − nm) / 17.591) + 0.97535 e^((430 − nm) / 82.122)))",
    inputs: [beer, path("0.cm"), { at: "0.nm", label: "Wavelength", ...BEER_COLOUR_RANGE.nm }],
    gives: "transmission, fraction",
    sources: ["delange-2016", "asbc-beer-10a"],
    validRange: "0 to 200 SRM, measured on 1 to 60; 0 to 100 cm; 380 to 780 nm.",
    call: beerTransmission,
    example: [{ srm: 12.7, cm: 1, nm: 430 }],
  },
  {
    id: "colour/beerSrgb",
    words:
      "The colour of beer on a screen: its spectrum in daylight D65 through the standard observer of 2°, on white. Beer beyond a pale lager is more saturated than a screen can show, so channels are clipped. A table of screen colours by SRM without a path says half of it: 5 SRM is straw in 1 cm and amber in 10.",
    equation: "X, Y, Z = Σ light × T × observer / Σ light × ȳ; sRGB by IEC 61966-2-1, each channel clipped",
    inputs: [beer, path("0.pathCm")],
    gives: "red, green and blue, 0 to 255",
    sources: ["delange-2016", "cie-1931", "iec-61966-2-1"],
    validRange: "0 to 200 SRM, measured on 1 to 60; 0 to 100 cm.",
    call: beerSrgb,
    example: [{ srm: 5, pathCm: 5 }],
  },
  {
    id: "colour/beerLab",
    words:
      "The colour of beer in CIELAB, in which distances are about as large as they look. Beer laboratories report it through 1 cm in illuminant C for the observer of 10°; a screen shows D65 and 2°. SRM is one violet wavelength; this is what the eye makes of all of them.",
    equation:
      "L = 116 f(Y) − 16, a = 500 (f(X) − f(Y)), b = 200 (f(Y) − f(Z)), each over that of white; f the cube root, near black a line",
    inputs: [beer, path("0.pathCm")],
    gives: "lightness 0 to 100, a and b",
    sources: ["delange-2016", "cie-lab-1976", "cie-1931", "cie-1964"],
    validRange: "0 to 200 SRM, measured on 1 to 60; 0 to 100 cm.",
    call: beerLab,
    example: [{ srm: 10, pathCm: 1, viewing: "C/10°" }],
  },
  {
    id: "colour/colourDifference",
    words:
      "How different two colours look, by the formula of 2000, which corrects the plain distance in CIELAB where the eye is keener or duller. About 1 is the least that shows side by side. An SRM more shows in a pale beer and not in a dark one.",
    equation: "ΔE = √((ΔL / S_L)² + (ΔC / S_C)² + (ΔH / S_H)² + R_T (ΔC / S_C)(ΔH / S_H)), CIEDE2000",
    inputs: [...labOf("0.one", "one"), ...labOf("0.other", "other")],
    gives: "difference, in units of about the least that is seen",
    sources: ["sharma-2005", "cie-lab-1976"],
    validRange: "Lightness 0 to 100, a and b −200 to 200.",
    call: colourDifference,
    example: [{ one: { lightness: 50, a: 2.5, b: 0 }, other: { lightness: 50, a: 0, b: -2.5 } }],
  },
];
