import {
  boilOffRate,
  chill,
  coilConductance,
  COOLANT_RANGE,
  EVAPORATION_RANGE,
  heatUp,
  heatUpCurve,
  ICE_RANGE,
  iceNeeded,
  INSULATION_RANGE,
  LATENT_HEAT_RANGE,
  latentHeat,
  powerToHoldBoil,
  vesselLoss,
  WORT_HEAT_RANGE,
} from "../../heat";
import {
  celsius,
  fraction,
  joulesPerKelvin,
  kilograms,
  kilogramsPerHour,
  litresPerMinute,
  squareMetres,
  watts,
  wattsPerKelvin,
} from "../../units";
import { fieldInput } from "./field-input";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** The end of a span that arithmetic reaches is drawn in by what rounding may cost. */
const WITHIN = 1 - 1e-12;

const BOIL = { boilingC: 100, ambientC: 20 };
const BOIL_LOSS = 8;
const BOIL_RATE = 3;
const HEATED = {
  massKg: 28,
  plato: 11,
  vesselHeatCapacity: 4000,
  powerW: 2500,
  lossCoefficient: 8,
  openAreaM2: 0.09,
  fromC: 67,
  toC: 99,
  ambientC: 20,
  relativeHumidity: 0.5,
};
const COOLED = {
  kind: "immersion",
  massKg: 24,
  plato: 12,
  vesselHeatCapacity: 4000,
  conductance: 450,
  coolantFlow: 8,
  coolantC: 14,
  lossCoefficient: 8,
  ambientC: 20,
  fromC: 99,
  toC: 20,
};
const ICED = { massKg: 24, plato: 12, vesselHeatCapacity: 4000, fromC: 30, toC: 20, iceC: -18, bathC: 5 };

const boilingW = (rate: number): number => (rate * latentHeat(celsius(BOIL.boilingC))) / 3600;

const wortInputs: readonly FunctionInput[] = [
  fieldInput("massKg", "Wort", kilograms.range),
  fieldInput("plato", "Extract", WORT_HEAT_RANGE.plato),
  fieldInput("vesselHeatCapacity", "Heat capacity of the vessel", joulesPerKelvin.range),
  fieldInput("fromC", "From", WORT_HEAT_RANGE.celsius),
];
const heatedInputs: readonly FunctionInput[] = [
  ...wortInputs,
  fieldInput("toC", "To", WORT_HEAT_RANGE.celsius),
  fieldInput("powerW", "Power into the wort", watts.range),
  fieldInput("lossCoefficient", "Heat loss", wattsPerKelvin.range),
  fieldInput("openAreaM2", "Open surface", squareMetres.range),
  fieldInput("ambientC", "Air", EVAPORATION_RANGE.ambient),
  fieldInput("relativeHumidity", "Relative humidity", fraction.range),
];
const boilInputs: readonly FunctionInput[] = [
  fieldInput("boilingC", "Boiling point", LATENT_HEAT_RANGE),
  fieldInput("ambientC", "Air", EVAPORATION_RANGE.ambient),
];

const HOT = "Boiling wort and steam scald: keep clear of the rim and follow local rules for the heater.";

/** How heating, boiling and cooling of the kettle are explained. */
export const HEAT_KETTLE_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "heat/heatUp",
    words: `How long a well-mixed kettle takes to heat, and what it evaporates on the way. Losses through the walls and from the open surface grow with temperature, so a weak heater stalls; then the answer is the temperature where it does. ${HOT}`,
    equation: "heat capacity × dT/dt = power − loss × (T − air) − area × heat of evaporation",
    inputs: heatedInputs,
    gives: "time, s, energy, kWh, and water evaporated, kg; or where heating stalls, °C",
    sources: ["energy-balance", "ashrae-carrier", "bubnik-1995"],
    validRange: "0 to 35 °P, 0 to 102 °C, air −30 to 60 °C.",
    call: heatUp,
    example: [HEATED],
  },
  {
    id: "heat/heatUpCurve",
    words: `The temperature of a kettle while it heats, as thirteen points at equal steps of temperature. Each stretch is computed with what the one before left in the kettle. ${HOT}`,
    equation: "heat capacity × dT/dt = power − loss × (T − air) − area × heat of evaporation, piece by piece",
    inputs: heatedInputs,
    gives: "minutes and °C; or where heating stalls, °C",
    sources: ["energy-balance", "ashrae-carrier"],
    validRange: "0 to 35 °P, 0 to 102 °C, air −30 to 60 °C.",
    call: heatUpCurve,
    example: [HEATED],
  },
  {
    id: "heat/boilOffRate",
    words: `What a boiling kettle evaporates: all power that its walls do not lose turns water into steam. A rate learned from the same kettle is better where there is one. ${HOT}`,
    equation: "evaporation = 3600 × (power − loss × (boiling point − air)) / heat of evaporation",
    inputs: [
      fieldInput("powerW", "Power into the wort", {
        ...watts.range,
        max: (boilingW(kilogramsPerHour.range.max) + BOIL_LOSS * (BOIL.boilingC - BOIL.ambientC)) * WITHIN,
      }),
      fieldInput("lossCoefficient", "Heat loss", {
        ...wattsPerKelvin.range,
        max: ((watts.range.max + 2500) / (BOIL.boilingC - BOIL.ambientC)) * WITHIN,
      }),
      ...boilInputs,
    ],
    gives: "evaporation, kg/h; or the power that is missing, W",
    sources: ["energy-balance", "nist-steam-tables"],
    validRange: "Boiling point 0 to 102 °C, air −30 to 60 °C, up to 10 000 kg/h.",
    call: boilOffRate,
    example: [{ ...BOIL, powerW: 2500, lossCoefficient: BOIL_LOSS }],
  },
  {
    id: "heat/powerToHoldBoil",
    words: `The power that holds a boil of a given evaporation: the heat of the steam and what the walls lose. Holding takes less than heating up in the same time, since the wort no longer warms. ${HOT}`,
    equation: "power = evaporation × heat of evaporation / 3600 + loss × (boiling point − air)",
    inputs: [
      fieldInput("boilOff", "Evaporation", kilogramsPerHour.range),
      fieldInput("lossCoefficient", "Heat loss", {
        ...wattsPerKelvin.range,
        max: ((watts.range.max - boilingW(BOIL_RATE)) / (BOIL.boilingC - BOIL.ambientC)) * WITHIN,
      }),
      ...boilInputs,
    ],
    gives: "power, W",
    sources: ["energy-balance", "nist-steam-tables"],
    validRange: "Boiling point 0 to 102 °C, air −30 to 60 °C, up to 10 MW.",
    call: powerToHoldBoil,
    example: [{ ...BOIL, boilOff: BOIL_RATE, lossCoefficient: BOIL_LOSS }],
  },
  {
    id: "heat/chill",
    words:
      "How long wort takes to cool and along which curve: by a coil in the kettle, through a counterflow exchanger, in melting ice or in the air. Wort in the kettle counts as well mixed, so a coil needs stirring; through a counterflow it leaves cold while the kettle stays hot. Everything that touches cooled wort must be clean.",
    equation:
      "heat capacity × dT/dt = −pull × (T − coolant) − loss × (T − air), with pull = flow × c × (1 − exp(−conductance / (flow × c)))",
    inputs: [
      ...wortInputs,
      fieldInput("toC", "To", WORT_HEAT_RANGE.celsius),
      fieldInput("conductance", "Conductance of the chiller", wattsPerKelvin.range),
      fieldInput("coolantFlow", "Flow of cooling water", litresPerMinute.range),
      fieldInput("coolantC", "Cooling water", COOLANT_RANGE),
      fieldInput("lossCoefficient", "Heat loss", wattsPerKelvin.range),
      fieldInput("ambientC", "Air", EVAPORATION_RANGE.ambient),
    ],
    gives: "time, s, cooling water, L, and curves; or the temperature below which it cannot cool, °C",
    sources: ["kays-london-1984", "energy-balance", "feistel-wagner-2006"],
    validRange: "0 to 35 °P, wort 0 to 102 °C, coolant 0 to 60 °C, air −30 to 60 °C.",
    call: chill,
    example: [COOLED],
  },
  {
    id: "heat/iceNeeded",
    words:
      "How much ice a bath needs to cool wort: the ice warms, melts, and its water warms to where the bath ends. The water that fills the bath and what the room gives come on top. Ice on bare skin burns; ice from outside does not belong in the wort.",
    equation: "ice = (wort × c + vessel) × (from − to) / (333430 + 2100 × cold of the ice + 4186.8 × bath)",
    inputs: [
      ...wortInputs,
      fieldInput("toC", "To", { ...WORT_HEAT_RANGE.celsius, min: ICED.bathC }),
      fieldInput("iceC", "Ice", ICE_RANGE),
      fieldInput("bathC", "Bath at the end", { unit: "°C", min: 0, max: ICED.toC }),
    ],
    gives: "ice, kg",
    sources: ["energy-balance", "feistel-wagner-2006", "crc-handbook"],
    validRange: "0 to 35 °P, wort 0 to 102 °C, ice −30 to 0 °C.",
    call: iceNeeded,
    example: [ICED],
  },
  {
    id: "heat/coilConductance",
    words:
      "The heat that passes an immersion coil for each kelvin, from its surface. Still wort lies on it as a cold film; stirring more than doubles what passes. Common practice without a source; one measured chill tells it better.",
    equation: "conductance = surface × 400 still (250 to 550), × 1000 stirred (700 to 1400)",
    inputs: [fieldInput("outsideM2", "Surface of the coil", squareMetres.range)],
    gives: "conductance and its range, W/K",
    sources: ["trade-practice"],
    validRange: "0 to 100 m².",
    call: coilConductance,
    example: [{ outsideM2: 0.4, wort: "stirred" }],
  },
  {
    id: "heat/vesselLoss",
    words:
      "The heat that a vessel loses for each kelvin above the air: the film of room air and the insulation, one after the other. Taps, seams and draughts are left out; the cooling of the real vessel tells it better. Insulation must bear the heat and stay away from flames.",
    equation: "loss = surface / (1 / 11 + thickness / conductivity)",
    inputs: [
      fieldInput("wallM2", "Surface of the vessel", squareMetres.range),
      fieldInput("insulationMm", "Insulation", INSULATION_RANGE.thickness),
      fieldInput("conductivity", "Conductivity of the insulation", INSULATION_RANGE.conductivity),
    ],
    gives: "heat loss, W/K",
    sources: ["energy-balance", "trade-practice"],
    validRange: "0 to 100 m², 0 to 500 mm, 0.01 to 400 W/(m·K).",
    call: vesselLoss,
    example: [{ wallM2: 0.8, insulationMm: 10, conductivity: 0.04 }],
  },
];
