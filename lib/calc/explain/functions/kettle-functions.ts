import { EVAPORATION_RANGE, LATENT_HEAT_RANGE, latentHeat } from "../../heat";
import {
  boilOff,
  coolingShrinkage,
  headspace,
  hopAbsorption,
  hotBreakAndTrubLoss,
  KETTLE_RANGE,
  wortVolume,
} from "../../kettle";
import { EXTRACT_RANGE } from "../../gravity/extract-range";
import { WORT_RANGE } from "../../gravity";
import {
  celsius,
  kilograms,
  kilogramsPerHour,
  litres,
  litresPerKilogram,
  minutes,
  squareMetres,
  watts,
  wattsPerKelvin,
} from "../../units";
import { fieldInput } from "./field-input";
import type { FunctionRecord } from "./function-record";

/** The end of a span that arithmetic reaches is drawn in by what rounding may cost. */
const WITHIN = 1 - 1e-12;

const BOIL = { wortKg: 28, minutes: 60, powerW: 2500, lossCoefficient: 8, boilingC: 100, ambientC: 20 };
const FULL = { capacity: 40, wort: 33, plato: 11, celsius: 100, foam: 4 };
const HOPS = { pelletsKg: 0.1, conesKg: 0.05, learned: 5 };
const ABOVE_AIR_K = BOIL.boilingC - BOIL.ambientC;
const MOST_BOIL_W = (kilogramsPerHour.range.max * latentHeat(celsius(BOIL.boilingC))) / 3600;
const MOST_HOPS_KG = litres.range.max / HOPS.learned;

const extract = fieldInput("plato", "Extract", EXTRACT_RANGE);

/** How the functions of the kettle are explained. */
export const KETTLE_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "kettle/boilOff",
    words:
      "What a boil evaporates, counted from when the wort boils and not from switching on: from the power that the walls do not lose, or at a rate learned from the same kettle. Boiling wort and steam scald: keep the lid off or ajar, stay clear of the rim and follow local rules for the heater.",
    equation: "evaporated = minutes / 60 × 3600 × (power − loss × (boiling point − air)) / heat of evaporation",
    inputs: [
      fieldInput("wortKg", "Wort", kilograms.range),
      fieldInput("minutes", "Boil", minutes.range),
      fieldInput("powerW", "Power into the wort", {
        ...watts.range,
        max: (MOST_BOIL_W + BOIL.lossCoefficient * ABOVE_AIR_K) * WITHIN,
      }),
      fieldInput("lossCoefficient", "Heat loss", {
        ...wattsPerKelvin.range,
        max: ((watts.range.max + BOIL.powerW) / ABOVE_AIR_K) * WITHIN,
      }),
      fieldInput("boilingC", "Boiling point", LATENT_HEAT_RANGE),
      fieldInput("ambientC", "Air", EVAPORATION_RANGE.ambient),
    ],
    gives:
      "water evaporated and wort left, kg, and the rate, kg/h; or the power missing, W; or when the kettle is dry, min",
    sources: ["energy-balance", "nist-steam-tables"],
    validRange: "Boiling point 0 to 102 °C, air −30 to 60 °C, up to 10 000 kg/h.",
    call: boilOff,
    example: [BOIL],
  },
  {
    id: "kettle/coolingShrinkage",
    words:
      "By how much wort shrinks when it cools, from the densities at both temperatures. The popular 4 % is water from the boil to 20 °C; strong wort shrinks a little less or more with its strength.",
    equation: "shrinkage = 1 − density before / density after",
    inputs: [extract, fieldInput("from", "Before", WORT_RANGE.celsius), fieldInput("to", "After", WORT_RANGE.celsius)],
    gives: "share of the hot volume, negative where it warms",
    sources: ["mass-balance", "kell-1975", "nbs-440-1942", "bubnik-1995"],
    validRange: "Up to 35 °P, 0 to 100 °C.",
    call: coolingShrinkage,
    example: [{ plato: 12, from: 100, to: 20 }],
  },
  {
    id: "kettle/wortVolume",
    words:
      "The volume of a mass of wort at a temperature. The library counts wort by mass, which neither swells nor shrinks, and shows it by volume.",
    equation: "volume = mass / density",
    inputs: [
      fieldInput("kg", "Wort", kilograms.range),
      extract,
      fieldInput("celsius", "Temperature", WORT_RANGE.celsius),
    ],
    gives: "volume, L",
    sources: ["kell-1975", "nbs-440-1942", "bubnik-1995"],
    validRange: "Up to 35 °P, 0 to 100 °C, up to 100 000 L.",
    call: wortVolume,
    example: [{ kg: 25, plato: 12, celsius: 20 }],
  },
  {
    id: "kettle/headspace",
    words:
      "Whether a kettle has room for its wort, hot, and for the foam of the first boil. The room for foam is common practice without a source. When the hot break comes up the foam rises within seconds: keep watch, turn the heat down in time and never lean over the kettle.",
    equation: "spare = capacity − foam − wort × density at 20 °C / density hot",
    inputs: [
      fieldInput("capacity", "Kettle to the rim", { ...KETTLE_RANGE, min: FULL.foam }),
      fieldInput("wort", "Wort, as if at 20 °C", litres.range),
      extract,
      fieldInput("celsius", "Temperature", { ...WORT_RANGE.celsius, min: 20 }),
      fieldInput("foam", "Room for foam", { unit: "L", min: 0, max: FULL.capacity }),
    ],
    gives: "hot volume, room left and the most wort that fits, L; or by how much it is too much, L",
    sources: ["mass-balance", "kell-1975", "trade-practice"],
    validRange: "Kettle from 0.1 L, up to 35 °P, 20 to 100 °C.",
    call: headspace,
    example: [FULL],
  },
  {
    id: "kettle/hopAbsorption",
    words:
      "The wort that spent hops keep: usually 6 L for a kilogram of pellets and 10 L for one of whole cones, common practice without a source, or a figure learned from the same kettle for both. Squeezing a hop bag gives part of it back.",
    equation: "kept = absorption × pellets + absorption × cones",
    inputs: [
      fieldInput("pelletsKg", "Pellets", { ...kilograms.range, max: (MOST_HOPS_KG - HOPS.conesKg) * WITHIN }),
      fieldInput("conesKg", "Whole hops", { ...kilograms.range, max: (MOST_HOPS_KG - HOPS.pelletsKg) * WITHIN }),
      fieldInput("learned", "Absorption of this kettle", litresPerKilogram.range),
    ],
    gives: "wort, L at 20 °C",
    sources: ["trade-practice"],
    validRange: "Up to 100 000 L.",
    call: hopAbsorption,
    example: [HOPS],
  },
  {
    id: "kettle/hotBreakAndTrubLoss",
    words:
      "The wort that stays in the kettle with the hot break. What counts is the layer that cannot be drawn without stirring it up: thin after a whirlpool on a plain bottom, thicker without, and thickest with a false bottom, which breaks the whirlpool and keeps the wort below it. Common practice without a source, good to half or double. Hot wort whirls over the rim easily: stir below it.",
    equation: "left = 0.003 × wort + bottom × depth; depth 5 mm whirled, 15 mm settled, 27 mm with a false bottom",
    inputs: [
      fieldInput("wort", "Wort, as if at 20 °C", litres.range),
      fieldInput("bottomM2", "Bottom of the kettle", squareMetres.range),
    ],
    gives: "wort left, its break and its clear part, L at 20 °C",
    sources: ["trade-practice"],
    validRange: "Up to 100 000 L and 100 m².",
    call: hotBreakAndTrubLoss,
    example: [{ wort: 23, bottomM2: 0.09, whirlpool: true, falseBottom: false }],
  },
];
