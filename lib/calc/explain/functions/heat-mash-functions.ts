import {
  decoctionVolume,
  EVAPORATION_RANGE,
  infusionVolume,
  mashHoldPower,
  MIXING_RANGE,
  RESTING_HEAT_CAPACITY_RANGE,
  restTemperature,
  stepHeat,
  strikeTemperature,
  STRIKE_RANGE,
  WATER_HEAT_CAPACITY,
  WORT_HEAT_RANGE,
} from "../../heat";
import {
  celsius,
  fraction,
  joulesPerKelvin,
  joulesPerKilogramKelvin,
  kilograms,
  minutes,
  squareMetres,
  watts,
  wattsPerKelvin,
} from "../../units";
import { fieldInput } from "./field-input";
import type { FunctionInput, FunctionRecord } from "./function-record";

/** The end of a span that arithmetic reaches is drawn in by what rounding may cost. */
const WITHIN = 1 - 1e-12;
/** How far a mixing temperature must lead, K. */
const LEAD_K = 0.1 + 1e-9;

const GRAIN = { grainKg: 5, grainHeatCapacity: 1700 };
const MASH = { ...GRAIN, waterKg: 15, vesselHeatCapacity: 0 };
const STEP = { ...MASH, fromC: 52, toC: 65 };
const STRIKE = { ...MASH, mashC: 67, grainC: 20, vesselC: 67 };
const SURROUNDINGS = { ambientC: 20, relativeHumidity: 0.5 };
const HELD = { celsius: 66, lossCoefficient: 6, openAreaM2: 0, ...SURROUNDINGS };

/** Heat that the grain of the example takes per kelvin, over that of water, kg; and how far strike water may cool. */
const GRAIN_AS_WATER_KG = (GRAIN.grainKg * GRAIN.grainHeatCapacity) / WATER_HEAT_CAPACITY;
const STRIKE_DROP_K = (STRIKE_RANGE.max - STRIKE.mashC) / (STRIKE.mashC - STRIKE.grainC);

const mashInputs: readonly FunctionInput[] = [
  fieldInput("grainKg", "Grain", kilograms.range),
  fieldInput("grainHeatCapacity", "Specific heat of the grain", joulesPerKilogramKelvin.range),
  fieldInput("vesselHeatCapacity", "Heat capacity of the vessel", joulesPerKelvin.range),
];
const stepInputs: readonly FunctionInput[] = [
  fieldInput("fromC", "Mash", { ...MIXING_RANGE.celsius, max: STEP.toC }),
  ...mashInputs,
];
const airInputs: readonly FunctionInput[] = [
  fieldInput("ambientC", "Air", EVAPORATION_RANGE.ambient),
  fieldInput("relativeHumidity", "Relative humidity", fraction.range),
];

const HOT = "Hot liquor scalds: pour slowly, away from the face, with gloves, and follow local rules for the heater.";

/** How the heat of the mash is explained. */
export const HEAT_MASH_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "heat/strikeTemperature",
    words: `How hot the water must be, so that grain stirred into it comes to rest at the mash temperature: a heat balance of water, grain and vessel. The heat of wetting is left out; popular rules hide it in a rounder constant. ${HOT}`,
    equation:
      "strike = mash + (grain × c × (mash − grain temperature) + vessel × (mash − vessel temperature)) / (water × 4186.8)",
    inputs: [
      fieldInput("mashC", "Mash", MIXING_RANGE.celsius),
      fieldInput("grainC", "Temperature of the grain", MIXING_RANGE.celsius),
      fieldInput("vesselC", "Temperature of the vessel", MIXING_RANGE.celsius),
      fieldInput("waterKg", "Water", { ...MIXING_RANGE.water, min: GRAIN_AS_WATER_KG / STRIKE_DROP_K / WITHIN }),
      fieldInput("grainKg", "Grain", {
        ...kilograms.range,
        max: (STRIKE_DROP_K * STRIKE.waterKg * WATER_HEAT_CAPACITY * WITHIN) / GRAIN.grainHeatCapacity,
      }),
      ...mashInputs.slice(1),
    ],
    gives: "temperature, °C; above the boiling point where no water is hot enough",
    sources: ["energy-balance", "brewing-room-book-1985"],
    validRange: "−20 to 102 °C, at least 0.001 kg of water, answers to 5000 °C.",
    call: strikeTemperature,
    example: [STRIKE],
  },
  {
    id: "heat/infusionVolume",
    words: `How much hot water brings a resting mash to its next temperature; cold water works the same way down. What the mash loses to the air meanwhile is left out. ${HOT}`,
    equation: "water = (grain × c + water × 4186.8 + vessel) × (to − from) / (4186.8 × (infusion − to))",
    inputs: [
      ...stepInputs,
      fieldInput("waterKg", "Water in the mash", kilograms.range),
      fieldInput("toC", "Next rest", { unit: "°C", min: STEP.fromC, max: 97.9 }),
      fieldInput("infusionC", "Infusion", { ...MIXING_RANGE.celsius, min: STEP.toC + LEAD_K }),
    ],
    gives: "water, kg",
    sources: ["energy-balance", "brewing-room-book-1985"],
    validRange: "−20 to 102 °C; the infusion at least 0.1 K hotter than the rest.",
    call: infusionVolume,
    example: [{ ...STEP, infusionC: 98 }],
  },
  {
    id: "heat/decoctionVolume",
    words: `How much of the mash to draw, boil and put back, so that the whole comes to its next rest: what the returned part gives, the rest and the vessel take. Brewers draw a tenth or two more for what cools on the way, which is left out. ${HOT}`,
    equation: "share = (mash + vessel) × (to − from) / (mash × (decoction − from)), heat capacities",
    inputs: [
      ...stepInputs,
      fieldInput("waterKg", "Water in the mash", MIXING_RANGE.water),
      fieldInput("toC", "Next rest", { unit: "°C", min: STEP.fromC, max: 99.9 }),
      fieldInput("decoctionC", "Decoction", { ...MIXING_RANGE.celsius, min: STEP.toC + LEAD_K }),
    ],
    gives: "mash to draw, L at 20 °C and as a share; or where even the whole mash would end, °C",
    sources: ["energy-balance", "brewing-room-book-1985", "trade-practice"],
    validRange: "−20 to 102 °C; the decoction at least 0.1 K hotter than the rest.",
    call: decoctionVolume,
    example: [{ ...STEP, decoctionC: 100 }],
  },
  {
    id: "heat/stepHeat",
    words: `How long a heated mash takes to its next rest: the balance of a kettle, with the grain beside the water. It assumes that the mash is kept moving; a mash that stands scorches and reads cold. ${HOT}`,
    equation: "(water × 4186.8 + grain × c + vessel) dT/dt = power − loss × (T − air) − area × heat of evaporation",
    inputs: [
      fieldInput("grainKg", "Grain", kilograms.range),
      fieldInput("grainHeatCapacity", "Specific heat of the grain", joulesPerKilogramKelvin.range),
      fieldInput("vesselHeatCapacity", "Heat capacity of the vessel", {
        ...joulesPerKelvin.range,
        max: joulesPerKelvin.range.max - GRAIN.grainKg * GRAIN.grainHeatCapacity,
      }),
      fieldInput("waterKg", "Water in the mash", kilograms.range),
      fieldInput("fromC", "Mash", WORT_HEAT_RANGE.celsius),
      fieldInput("toC", "Next rest", WORT_HEAT_RANGE.celsius),
      fieldInput("powerW", "Power into the mash", watts.range),
      fieldInput("lossCoefficient", "Heat loss", wattsPerKelvin.range),
      fieldInput("openAreaM2", "Open surface", squareMetres.range),
      ...airInputs,
    ],
    gives: "time, s, energy, kWh, and water evaporated, kg; or where heating stalls, °C",
    sources: ["energy-balance", "ashrae-carrier", "brewing-room-book-1985"],
    validRange: "0 to 102 °C, air −30 to 60 °C.",
    call: stepHeat,
    example: [{ ...STEP, vesselHeatCapacity: 4000, powerW: 2500, lossCoefficient: 6, openAreaM2: 0, ...SURROUNDINGS }],
  },
  {
    id: "heat/mashHoldPower",
    words:
      "The power that holds a rest at its temperature: what the walls lose and, without a lid, what evaporation carries off in still air. It is a small part of what heating takes, so a thermostat is off most of the time.",
    equation: "power = loss × (T − air) + area × (p of the water − p of the air) × (0.089 + 0.0782 × 0.1)",
    inputs: [
      fieldInput("celsius", "Mash", EVAPORATION_RANGE.celsius),
      fieldInput("lossCoefficient", "Heat loss", {
        ...wattsPerKelvin.range,
        max: (watts.range.max / (HELD.celsius - HELD.ambientC)) * WITHIN,
      }),
      fieldInput("openAreaM2", "Open surface", squareMetres.range),
      ...airInputs,
    ],
    gives: "power, W",
    sources: ["energy-balance", "ashrae-carrier"],
    validRange: "Mash 0 to 102 °C, air −30 to 60 °C, up to 10 MW.",
    call: mashHoldPower,
    example: [HELD],
  },
  {
    id: "heat/restTemperature",
    words:
      "How far a vessel that nobody heats drifts towards the air, by Newton's law of cooling. It counts as well mixed; the middle of a real mash stays warmer than its rim.",
    equation: "T = air + (start − air) × exp(−loss × time / heat capacity)",
    inputs: [
      fieldInput("fromC", "Start", celsius.range),
      fieldInput("ambientC", "Air", celsius.range),
      fieldInput("heatCapacity", "Heat capacity", RESTING_HEAT_CAPACITY_RANGE),
      fieldInput("lossCoefficient", "Heat loss", wattsPerKelvin.range),
      fieldInput("minutes", "Time", minutes.range),
    ],
    gives: "temperature after the rest, °C",
    sources: ["energy-balance"],
    validRange: "Heat capacity from 1 J/K.",
    call: restTemperature,
    example: [{ fromC: 67, ambientC: 20, heatCapacity: 36000, lossCoefficient: 1, minutes: 60 }],
  },
];
