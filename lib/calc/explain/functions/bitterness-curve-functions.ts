import {
  CURVE_RANGE,
  equivalentBoilMinutes,
  ibuFromEquivalentMinutes,
  isoFraction,
  ISOMERISATION_RANGE,
  isomerisationRates,
  standIbu,
  TINSETH_RANGE,
} from "../../bitterness";
import { ADDITION, ADDITION_INPUTS } from "./bitterness-functions";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** A stand of the example: minutes of its start and end, °C at both. */
const STAND_MIN = 20;
const curveInputs: readonly FunctionInput[] = [
  { at: "0.curve.0.0", label: "Minute of the first point", ...CURVE_RANGE.minute, max: STAND_MIN },
  { at: "0.curve.0.1", label: "Temperature there", ...CURVE_RANGE.celsius },
  { at: "0.curve.1.0", label: "Minute of the second point", ...CURVE_RANGE.minute },
  { at: "0.curve.1.1", label: "Temperature there", ...CURVE_RANGE.celsius },
];
const curve = [
  [0, 80],
  [STAND_MIN, 80],
];

/** How the functions of hops over a real temperature curve are explained. */
export const BITTERNESS_CURVE_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "bitterness/isomerisationRates",
    words:
      "How fast alpha acids turn into bitter iso-alpha acids, and these into what is not bitter, at a temperature. Measured in buffer at pH 5.2 from 90 to 130 °C; gravity, calcium and pH from 4.8 to 6.0 made no difference. At 80 °C the first is a sixth of what it is at 100 °C, so the rule that nothing isomerises below the boil is wrong.",
    equation: "k1 = 7.9·10¹¹ × e^(−11858 / T), k2 = 4.1·10¹² × e^(−12994 / T), per minute, T in kelvin",
    inputs: [{ at: "0", label: "Temperature", ...ISOMERISATION_RANGE }],
    gives: "k1 of isomerisation and k2 of degradation, per minute",
    sources: ["malowicki-shellhammer-2005"],
    validRange: "50 to 130 °C; studied from 90 °C on, below that by the law of Arrhenius.",
    call: isomerisationRates,
    example: [100],
  },
  {
    id: "bitterness/isoFraction",
    words:
      "The share of the alpha acids that is iso-alpha acid at the end of a temperature curve, by the kinetics alone. Wort, trub and yeast then take about half of it, which is why Tinseth's 0.231 for an hour at 1.050 stands beside 0.476 here. It peaks at 0.63 after two hours at 100 °C; longer boils destroy more than they form.",
    equation: "da/dt = −k1 a, di/dt = k1 a − k2 i along the curve, from a = 1 and i = 0",
    inputs: curveInputs,
    gives: "iso-alpha acids, fraction of the alpha acids at the start",
    sources: ["malowicki-shellhammer-2005", "dormand-prince-1980"],
    validRange: "0 to 110 °C; studied from 90 to 130 °C.",
    call: isoFraction,
    example: [{ curve }],
  },
  {
    id: "bitterness/equivalentBoilMinutes",
    words:
      "How many minutes at 100 °C isomerise as much as a temperature curve does. With it a formula made for the boil serves a boil on a mountain, a stand and a slow chill: 20 min at 80 °C are 3.3 min, 20 min of cooling from 100 to 80 °C are 9.4. What is added below 60 °C is next to nothing.",
    equation: "minutes = ∫ k1(T) / k1(100 °C) dt over straight lines between the points",
    inputs: curveInputs,
    gives: "equivalent time, min",
    sources: ["malowicki-shellhammer-2005"],
    validRange: "0 to 110 °C; the rate was studied from 90 to 130 °C.",
    call: equivalentBoilMinutes,
    example: [{ curve }],
  },
  {
    id: "bitterness/ibuFromEquivalentMinutes",
    words:
      "The bitterness of hops that saw any temperature curve, from its equivalent minutes: Tinseth's equation with these in place of the time in the boil. An hour at 100 °C stays what Tinseth printed, and losses stay inside his fit.",
    equation: "IBU = Tinseth's utilisation of the equivalent minutes × alpha fraction × 1000 × grams / litres",
    inputs: [
      ...ADDITION_INPUTS,
      { at: "0.equivalentMinutes", label: "Equivalent minutes at 100 °C", ...TINSETH_RANGE.minutes },
    ],
    gives: "bitterness, IBU",
    sources: ["tinseth-1997", "malowicki-shellhammer-2005"],
    validRange: "SG 1.000 to 1.160, 0 to 240 equivalent minutes; up to 1000 IBU.",
    call: ibuFromEquivalentMinutes,
    example: [{ ...ADDITION, equivalentMinutes: 60 }],
  },
  {
    id: "bitterness/standIbu",
    words:
      "The bitterness of hops that go in after flame-out, from the temperatures they see until the wort is cold. 50 g of 10 % alpha in 20 L of 1.050 give 7.9 IBU in 20 min held at 80 °C after a fast chill, 19.9 IBU in 20 min of cooling from 100 to 80 °C, and 25.3 IBU in both: a kettle that cools slowly makes a beer more bitter by more than a stand is planned to. The common rule of a fixed tenth for any stand tells none of this.",
    equation: "IBU = Tinseth's utilisation of ∫ k1(T) / k1(100 °C) dt × alpha fraction × 1000 × grams / litres",
    inputs: [...ADDITION_INPUTS, ...curveInputs],
    gives: "bitterness, IBU",
    sources: ["tinseth-1997", "malowicki-shellhammer-2005"],
    validRange: "0 to 110 °C, up to 240 equivalent minutes and 1000 IBU.",
    call: standIbu,
    example: [{ alphaFraction: 0.1, grams: 50, litres: 20, sg: 1.05, curve }],
  },
];
