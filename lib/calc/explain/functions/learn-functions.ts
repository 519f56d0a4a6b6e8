import { COOLANT_RANGE, EVAPORATION_RANGE, LATENT_HEAT_RANGE } from "../../heat";
import { DIP_STICK_RANGE } from "../../kettle";
import { WATER_DENSITY_RANGE } from "../../gravity";
import {
  commissionBoilOff,
  commissionChill,
  commissionCounterflow,
  commissionDeadSpace,
  commissionHeating,
  dipStick,
  READING_SD_RANGE,
  TRIAL_RANGE,
  WATER_RANGE,
} from "../../learn";
import { fraction, joulesPerKelvin, litres, litresPerMinute, squareMetres, wattsPerKelvin } from "../../units";
import type { Range } from "../../errors";
import { fieldInput } from "./field-input";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** Minutes and °C of a kettle of 2.4 kW that loses 8 W/K, with 25 kg of water. */
const RAMP = [
  [0, 15],
  [15, 34.4],
  [30, 52.6],
  [45, 69.5],
  [60, 85.4],
] as const;
const REST = [
  [0, 85],
  [30, 76.7],
  [60, 69.4],
] as const;
const CHILL = [
  [0, 95],
  [5, 49],
  [10, 29.1],
  [15, 20.5],
] as const;

const timed = (rows: readonly (readonly [minute: number, celsius: number])[]) =>
  rows.map(([minute, celsius]) => ({ seconds: 60 * minute, celsius, sd: 0.3 }));
const SURROUNDINGS = { openAreaM2: 0, ambientC: 18, relativeHumidity: 0.5 };
const VESSEL = { value: 4000, sd: 800 };
const WATER = { value: 25, sd: 0.1 };
const COUNTERFLOW = {
  water: { value: 20, sd: 0.1 },
  seconds: 600,
  hotC: { value: 90, sd: 0.5 },
  outC: { value: 24, sd: 0.3 },
  coolantC: { value: 14, sd: 0.3 },
  coolantFlow: { value: 6, sd: 0.1 },
};

const at = (path: string, label: string, { unit, min, max }: Range): FunctionInput => ({
  at: `0.${path}`,
  label,
  unit,
  min,
  max,
});
const vessel = at("vesselHeatCapacity.value", "Heat capacity of the vessel", joulesPerKelvin.range);
const HOT = "Hot water and steam scald, and mains electricity stands beside water: follow local rules for the heater.";

/** How the figures of a commissioning trial are explained. */
export const LEARN_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "learn/commissionHeating",
    words: `The power that reaches the water and the heat that the walls lose, from water heated and left to cool. Both show apart only in the bend of the curve: a short straight ramp is refused, and the answer says what would tell. Temperatures alone tell ratios, so the water has to be measured; two different amounts of it tell the vessel too. ${HOT}`,
    equation:
      "min Σ ((reading − T(t)) / sd)², heat capacity × dT/dt = power − loss × (T − air) − area × heat of evaporation",
    inputs: [
      at("runs.0.water.value", "Water", WATER_RANGE),
      at("runs.0.openAreaM2", "Open surface", squareMetres.range),
      at("runs.0.ambientC", "Air", EVAPORATION_RANGE.ambient),
      at("runs.0.relativeHumidity", "Relative humidity", fraction.range),
      at("runs.0.readings.2.celsius", "A reading", EVAPORATION_RANGE.celsius),
      at("runs.0.readings.2.sd", "Its uncertainty", READING_SD_RANGE.celsius),
      at("boilingC", "Boiling point", EVAPORATION_RANGE.celsius),
      vessel,
    ],
    gives: "power, W, loss, W/K, and heat capacity, J/K, with standard errors; or why they are not told",
    sources: ["energy-balance", "ashrae-carrier", "marquardt-1963", "birge-1932"],
    validRange: "Water of 0 to 102 °C, air −30 to 60 °C, up to 20 runs of 48 hours.",
    call: commissionHeating,
    example: [
      {
        runs: [
          { kind: "heating", water: WATER, ...SURROUNDINGS, readings: timed(RAMP) },
          { kind: "cooling", water: WATER, ...SURROUNDINGS, readings: timed(REST) },
        ],
        boilingC: 100,
        vesselHeatCapacity: VESSEL,
      },
    ],
  },
  {
    id: "learn/commissionBoilOff",
    words:
      "What a kettle boils off in an hour, from volumes read while it boils: each becomes a mass by the density at its own temperature, and a straight line runs through them. Count from when it boils, at the power that is used for brewing. Read the mark from the side and not over the steam, which scalds.",
    equation: "mass = mass at the start − rate × time; power in the steam = rate × heat of evaporation / 3600",
    inputs: [
      at("boilingC", "Boiling point", LATENT_HEAT_RANGE),
      at("runs.0.readings.0.litres", "Volume at the start", litres.range),
      at("runs.0.readings.0.celsius", "Its temperature", WATER_DENSITY_RANGE),
      at("runs.0.readings.0.sd", "Its uncertainty", READING_SD_RANGE.litres),
      at("runs.0.readings.1.seconds", "Time of the second reading", TRIAL_RANGE.seconds),
    ],
    gives: "rate, kg/h, and power in the steam, W, with standard errors; or that it boiled for too short a time",
    sources: ["mass-balance", "energy-balance", "nist-steam-tables", "kell-1975"],
    validRange: "Water of 0 to 100 °C, boiling point 0 to 102 °C.",
    call: commissionBoilOff,
    example: [
      {
        boilingC: 100,
        runs: [
          {
            readings: [
              { seconds: 0, litres: 30, celsius: 100, sd: 0.1 },
              { seconds: 3600, litres: 27, celsius: 100, sd: 0.1 },
            ],
          },
        ],
      },
    ],
  },
  {
    id: "learn/commissionChill",
    words:
      "The conductance of an immersion chiller or an ice bath, from plain water that cools. Water, vessel, loss, flow and coolant are taken as stated, and what is uncertain of them is passed on. Where the cooling water leaves nearly as warm as the kettle is, the coil hardly shows, and a larger flow is asked for. Stir as on a brew day, and mind hot water and a wet floor.",
    equation:
      "min Σ ((reading − T(t)) / sd)², heat capacity × dT/dt = −pull × (T − coolant) − loss × (T − air), pull = flow × c × (1 − exp(−conductance / (flow × c)))",
    inputs: [
      at("runs.0.water.value", "Water", WATER_RANGE),
      at("runs.0.ambientC", "Air", EVAPORATION_RANGE.ambient),
      at("runs.0.coolantC.value", "Cooling water", COOLANT_RANGE),
      at("runs.0.coolantFlow.value", "Flow of cooling water", litresPerMinute.range),
      at("runs.0.readings.1.celsius", "A reading", EVAPORATION_RANGE.celsius),
      at("runs.0.readings.1.sd", "Its uncertainty", READING_SD_RANGE.celsius),
      vessel,
      at("lossCoefficient.value", "Heat loss", wattsPerKelvin.range),
    ],
    gives: "conductance, W/K, with its standard error; or why it is not told",
    sources: ["kays-london-1984", "energy-balance", "marquardt-1963"],
    validRange: "Water of 0 to 102 °C, coolant 0 to 60 °C, air −30 to 60 °C.",
    call: commissionChill,
    example: [
      {
        kind: "immersion",
        vesselHeatCapacity: VESSEL,
        lossCoefficient: { value: 8, sd: 1 },
        runs: [
          {
            water: WATER,
            ambientC: 18,
            coolantC: { value: 14, sd: 0.3 },
            coolantFlow: { value: 8, sd: 0.2 },
            readings: timed(CHILL),
          },
        ],
      },
    ],
  },
  {
    id: "learn/commissionCounterflow",
    words:
      "The conductance of a counterflow or plate chiller, from hot water that ran through it at a steady pace: the heat given up over the log-mean difference of temperature. What the coolant takes up tells how hot it must have left, which can be felt and checked. Hoses with hot water come loose and scald: fix them first.",
    equation: "conductance = water / time × c × (hot − out) / log mean (hot − coolant out, out − coolant)",
    inputs: [
      at("water.value", "Water", WATER_RANGE),
      at("hotC.value", "Hot water", EVAPORATION_RANGE.celsius),
      at("outC.value", "Cooled water", EVAPORATION_RANGE.celsius),
      at("coolantC.value", "Cooling water", COOLANT_RANGE),
      at("coolantFlow.value", "Flow of cooling water", { ...litresPerMinute.range, min: 0.01 }),
      fieldInput("seconds", "Time", { ...TRIAL_RANGE.seconds, min: 10 }),
    ],
    gives: "conductance, W/K, with its standard error, and the coolant as it leaves, °C; or why it is not told",
    sources: ["kays-london-1984", "energy-balance"],
    validRange: "Water of 0 to 102 °C, coolant 0 to 60 °C, 10 s to 48 h.",
    call: commissionCounterflow,
    example: [COUNTERFLOW],
  },
  {
    id: "learn/commissionDeadSpace",
    words:
      "What stays behind when a vessel has run empty: the weighted mean of what was poured out of it into a jug, at 20 °C. Several collections that scatter more than the jug allows are widened by how much they do. Wort leaves more than water does, for trub and hops lie on top of it.",
    equation: "volume = Σ (V / sd²) / Σ (1 / sd²)",
    inputs: [
      at("readings.0.litres", "Volume", litres.range),
      at("readings.0.celsius", "Temperature", WATER_DENSITY_RANGE),
      at("readings.0.sd", "Its uncertainty", READING_SD_RANGE.litres),
    ],
    gives: "volume, L at 20 °C, with its standard error; or that there is nothing to go by",
    sources: ["birge-1932", "kell-1975"],
    validRange: "Water of 0 to 100 °C, up to 500 collections.",
    call: commissionDeadSpace,
    example: [{ readings: [{ litres: 1.2, celsius: 20, sd: 0.05 }] }],
  },
  {
    id: "learn/dipStick",
    words:
      "The table of a dip-stick, from jugs of cold water poured into the empty kettle one after the other. Volumes and variances add up, and what a reading is uncertain by comes on top through the slope there. Put the marks close together where the bottom is round. A full kettle is heavy: fill it where it stands.",
    equation: "volume at a mark = Σ poured; sd² = Σ sd of the jugs² + (slope × sd of the reading)²",
    inputs: [
      at("pours.0.litres", "Poured in", { ...litres.range, min: 0.001 }),
      at("pours.0.sd", "Its uncertainty", READING_SD_RANGE.litres),
      at("pours.1.reading", "Where it stands", { ...DIP_STICK_RANGE.reading, min: 52.001 }),
      at("pours.1.readingSd", "Uncertainty of the reading", DIP_STICK_RANGE.readingSd),
    ],
    gives: "the table; or that it has fewer than two marks, or one that does not rise",
    sources: ["jcgm-100-2008"],
    validRange: "Up to 60 pours, readings 0 to 5000, up to 100 000 L.",
    call: dipStick,
    example: [
      {
        unit: "mm",
        pours: [
          { litres: 5, sd: 0.05, reading: 52, readingSd: 1 },
          { litres: 5, sd: 0.05, reading: 104, readingSd: 1 },
        ],
      },
    ],
  },
];
