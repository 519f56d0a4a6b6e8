import {
  BLENDED_RANGE,
  blend,
  boilDownTo,
  diluteTo,
  EXTRACT_RANGE,
  extractMass,
  platoAfterDilution,
  platoToSpecificGravity,
  pointsPerPoundGallonFromExtract,
  SPECIFIC_GRAVITY_RANGE,
  specificGravityToPlato,
  TARGET_PLATO_RANGE,
  WATER_DENSITY_RANGE,
  waterDensity,
  WORT_RANGE,
  wortDensity,
} from "../../gravity";
import { fraction, litres } from "../../units";
import type { FunctionInput, FunctionRecord } from "./function-record";

const wortLitres: FunctionInput = { at: "0.litres", label: "Wort, L at 20 °C", ...BLENDED_RANGE };
const wortPlato: FunctionInput = { at: "0.plato", label: "Strength of the wort", ...WORT_RANGE.plato };
const targetPlato: FunctionInput = { at: "0.targetPlato", label: "Strength wanted", ...TARGET_PLATO_RANGE };
const temperature: FunctionInput = { at: "0.celsius", label: "Temperature", ...WATER_DENSITY_RANGE };

/** How the functions of extract, gravity and density are explained. */
export const GRAVITY_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "gravity/platoToSpecificGravity",
    words:
      "The specific gravity, 20 °C over water at 20 °C and weighed in air as the tables do, of wort of a strength. It is worked from the densities of sucrose solutions behind the tables, not from a fit to the tables. Below zero no such solution exists; there the curve is carried on, and that is what apparent extract of beer lighter than water means: 0.9955 is −1.17 °P. The rule of dividing the points by four is 0.1 °P high at 1.050 and 1.2 °P at 1.100.",
    equation:
      "SG = 1 + 0.999972 × (3.8570322·10⁻³ P + 1.2788454·10⁻⁵ P² + 6.3273059·10⁻⁸ P³ − 2.2384803·10⁻¹⁰ P⁴) / (water at 20 °C − 0.0012 kg/L)",
    inputs: [{ at: "0", label: "Extract", ...EXTRACT_RANGE }],
    gives: "specific gravity 20/20",
    sources: ["nbs-440-1942", "asbc-tables"],
    validRange: "−9 to 35 °P; the table reaches from 0 to 60 % of sucrose.",
    call: platoToSpecificGravity,
    example: [12],
  },
  {
    id: "gravity/specificGravityToPlato",
    words:
      "The extract of wort, or the apparent extract of beer, from its specific gravity: the exact inverse of platoToSpecificGravity, by three steps of Newton from the usual fit. A cubic that many use for it drifts by 0.06 °P at 35 °P and does not give the gravity back.",
    equation: "P such that platoToSpecificGravity(P) = SG, from 258.6 (SG − 1) / (1 + 0.8795 (SG − 1))",
    inputs: [{ at: "0", label: "Specific gravity", ...SPECIFIC_GRAVITY_RANGE }],
    gives: "extract, °P",
    sources: ["nbs-440-1942", "lincoln-1987"],
    validRange: "0.9661 to 1.1535, which is −9 to 35 °P.",
    call: specificGravityToPlato,
    example: [1.05],
  },
  {
    id: "gravity/waterDensity",
    words:
      "The density of pure water without air at sea-level pressure. Kell's equation serves because a kettle boils; newer ones are a few parts in a million better when cold and wrong when hot. Salts of brewing water add about 0.0003 kg/L and are left out.",
    equation:
      "ρ = (999.83952 + 16.945176 t − 7.9870401·10⁻³ t² − 46.170461·10⁻⁶ t³ + 105.56302·10⁻⁹ t⁴ − 280.54253·10⁻¹² t⁵) / (1 + 16.87985·10⁻³ t) / 1000",
    inputs: [{ at: "0", label: "Temperature", ...WATER_DENSITY_RANGE }],
    gives: "density, kg/L",
    sources: ["kell-1975"],
    validRange: "0 to 100 °C.",
    call: waterDensity,
    example: [20],
  },
  {
    id: "gravity/wortDensity",
    words:
      "The density of wort as a solution of as much sucrose: water, the rise of the tables at 20 °C, and the change of that rise with temperature. Malt sugars are within 0.0003 kg/L of sucrose. Beer goes by its apparent extract, which holds at 20 °C and is a little high when warm. The rule that hot wort is 4 % larger than cold comes out of it: 3.9 % from 100 to 20 °C.",
    equation: "ρ = water at t + rise of the tables at 20 °C + polynomial of Bubník at t less the same at 20 °C",
    inputs: [{ at: "0.plato", label: "Extract", ...EXTRACT_RANGE }, temperature],
    gives: "density, kg/L",
    sources: ["nbs-440-1942", "bubnik-1995", "kell-1975"],
    validRange: "−9 to 35 °P, 0 to 100 °C.",
    call: wortDensity,
    example: [{ plato: 12, celsius: 20 }],
  },
  {
    id: "gravity/extractMass",
    words:
      "The extract in a volume of wort: volume times density times strength. A volume read hot is weighed with the density when hot, so the answer does not change as the wort cools. Apparent extract of beer is no mass, so nothing below zero is taken.",
    equation: "kg of extract = litres × density(°P, °C) × °P / 100",
    inputs: [{ at: "0.litres", label: "Volume", ...litres.range }, wortPlato, temperature],
    gives: "extract, kg",
    sources: ["mass-balance", "nbs-440-1942"],
    validRange: "0 to 35 °P, 0 to 100 °C.",
    call: extractMass,
    example: [{ litres: 20, plato: 12, celsius: 20 }],
  },
  {
    id: "gravity/blend",
    words:
      "What worts, or wort and water, become when mixed. Masses and extract add up; volumes only nearly, by less than 0.1 %. Averaging the strengths by volume, as is often done, is 0.04 °P off for 16 and 10 °P.",
    equation: "°P = 100 × Σ extract / Σ mass; litres = Σ mass / density(°P)",
    inputs: [
      { at: "0.0.litres", label: "First wort, L at 20 °C", ...BLENDED_RANGE },
      { at: "0.0.plato", label: "Its strength", ...WORT_RANGE.plato },
      { at: "0.1.litres", label: "Second wort, L at 20 °C", ...BLENDED_RANGE },
      { at: "0.1.plato", label: "Its strength", ...WORT_RANGE.plato },
    ],
    gives: "volume, L at 20 °C, and strength, °P",
    sources: ["mass-balance"],
    validRange: "0 to 35 °P and up to 50 000 L each, with some volume in all.",
    call: blend,
    example: [
      [
        { litres: 10, plato: 16 },
        { litres: 10, plato: 10 },
      ],
    ],
  },
  {
    id: "gravity/platoAfterDilution",
    words:
      "The strength of wort after water was added to it, by the mass balance. Gravity points times litres, the usual rule, agree within 1 % of the points.",
    equation: "°P = 100 × extract / (mass of the wort + mass of the water)",
    inputs: [wortLitres, wortPlato, { at: "0.waterLitres", label: "Water, L at 20 °C", ...BLENDED_RANGE }],
    gives: "strength, °P",
    sources: ["mass-balance"],
    validRange: "0 to 35 °P, up to 50 000 L each.",
    call: platoAfterDilution,
    example: [{ litres: 20, plato: 15, waterLitres: 4 }],
  },
  {
    id: "gravity/diluteTo",
    words:
      "The water that brings wort down to a strength, and the volume then. Where the wort is weaker already it says so: then boil it down or add sugar. Water that goes into the fermenter unboiled brings air and what lives in it; boil and cool it.",
    equation: "water = mass × (°P / target − 1) / density of water",
    inputs: [wortLitres, wortPlato, targetPlato],
    gives: "water and volume, L at 20 °C, or that the wort is weaker already",
    sources: ["mass-balance"],
    validRange: "Wort 0 to 35 °P, target 0.1 to 35 °P.",
    call: diluteTo,
    example: [{ litres: 20, plato: 15, targetPlato: 12 }],
  },
  {
    id: "gravity/boilDownTo",
    words:
      "The water to boil away until wort has a strength, and the volume left, both at 20 °C; hot in the kettle they read 4 % more. Where the wort is stronger already it says so. A longer boil darkens the wort and draws more from hops that are in it.",
    equation: "water = mass × (1 − °P / target) / density of water",
    inputs: [wortLitres, wortPlato, targetPlato],
    gives: "water to evaporate and volume left, L at 20 °C, or that it is no boil that is wanted",
    sources: ["mass-balance"],
    validRange: "Wort 0 to 35 °P, target 0.1 to 35 °P.",
    call: boilDownTo,
    example: [{ litres: 25, plato: 10, targetPlato: 12 }],
  },
  {
    id: "gravity/pointsPerPoundGallonFromExtract",
    words:
      "The extract of an ingredient in the unit of US tables: thousandths of gravity that a pound gives in a US gallon. Sucrose gives 46.2 by its density; tables that print 46 round it. The extract is that of the ingredient as it is, with its moisture.",
    equation: "points = 46.2 × extract",
    inputs: [{ at: "0", label: "Extract as a fraction of mass", ...fraction.range }],
    gives: "points × US gallon per pound",
    sources: ["nbs-440-1942"],
    validRange: "0 to 1.",
    call: pointsPerPoundGallonFromExtract,
    example: [0.8],
  },
];
