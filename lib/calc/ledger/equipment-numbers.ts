import type { Range } from "../errors";
import { COOLANT_RANGE } from "../heat/chill";
import {
  celsius,
  fraction,
  joulesPerKelvin,
  kilograms,
  kilogramsPerHour,
  litres,
  litresPerKilogram,
  litresPerMinute,
  metres,
  squareMetres,
  volts,
  watts,
  wattsPerKelvin,
} from "../units";
import type { Ambient, Chiller, Equipment, Fermenter, Figure, Kettle, Lauter, MashVessel } from "./equipment";
import type { Numbers } from "./recipe-numbers";

/** Figures of a part: field, what a message calls it, and the range of its value. */
export type Figures<T> = readonly (readonly [field: FigureField<T> & string, label: string, range: Range])[];

/** The fields of a part that hold a figure with its uncertainty. */
export type FigureField<T> = { readonly [K in keyof T]: T[K] extends Figure<number> ? K : never }[keyof T];

/** With less of the power, or of the extract, nothing comes of a brew but divisions by nothing. */
const LEAST_SHARE = 0.01;

const VESSEL: Range = { ...litres.range, min: 0.1 };

export const EQUIPMENT_NUMBERS: Numbers<Equipment> = [
  ["usualBatch", "usual batch", VESSEL],
  ["altitude", "altitude", metres.range],
];
export const EQUIPMENT_FIGURES: Figures<Equipment> = [
  ["hopAbsorption", "wort held by the hops", litresPerKilogram.range],
];

export const KETTLE_NUMBERS: Numbers<Kettle> = [
  ["capacity", "kettle volume", VESSEL],
  ["headspace", "kettle headspace", litres.range],
  ["minimum", "least volume over the element", litres.range],
  ["openArea", "open surface of the kettle", squareMetres.range],
  ["heatCapacity", "heat capacity of the kettle", joulesPerKelvin.range],
  ["ratedPower", "rated power", watts.range],
  ["ratedVoltage", "rated voltage", { ...volts.range, min: 1 }],
  ["supplyVoltage", "supply voltage", volts.range],
];
export const KETTLE_FIGURES: Figures<Kettle> = [
  ["heatShare", "share of the power that reaches the liquid", { ...fraction.range, min: LEAST_SHARE }],
  ["lossCoefficient", "heat loss of the kettle", wattsPerKelvin.range],
  ["boilOff", "boil-off", kilogramsPerHour.range],
  ["trub", "wort left with the trub", litres.range],
  ["transfer", "wort left in chiller and hoses", litres.range],
];

export const MASH_VESSEL_NUMBERS: Numbers<MashVessel> = [
  ["capacity", "mash vessel volume", VESSEL],
  ["grainLimit", "largest grist of the basket", { ...kilograms.range, min: 0.01 }],
  ["heatCapacity", "heat capacity of the mash vessel", joulesPerKelvin.range],
  ["lossCoefficient", "heat loss of the mash vessel", wattsPerKelvin.range],
  ["thickest", "thickest mash", { ...litresPerKilogram.range, min: 0.5 }],
];

export const LAUTER_NUMBERS: Numbers<Lauter> = [["spargeHeater", "power of the sparge-water heater", watts.range]];
export const LAUTER_FIGURES: Figures<Lauter> = [
  ["absorption", "wort held by the grain", litresPerKilogram.range],
  ["deadSpace", "dead space under the grain", litres.range],
  ["bypass", "sparge water that runs past the grain", fraction.range],
  ["conversion", "conversion", { ...fraction.range, min: LEAST_SHARE }],
];

export const CHILLER_NUMBERS: Numbers<Chiller> = [
  ["coolantFlow", "coolant flow", litresPerMinute.range],
  ["coolant", "coolant temperature", COOLANT_RANGE],
];
export const CHILLER_FIGURES: Figures<Chiller> = [
  ["conductance", "heat transfer of the chiller", wattsPerKelvin.range],
];

export const FERMENTER_NUMBERS: Numbers<Fermenter> = [
  ["capacity", "fermenter volume", VESSEL],
  ["headspace", "fermenter headspace", litres.range],
];
export const FERMENTER_FIGURES: Figures<Fermenter> = [["left", "beer left with the yeast", litres.range]];

export const AMBIENT_NUMBERS: Numbers<Ambient> = [
  ["air", "air temperature", { ...celsius.range, min: -20, max: 60 }],
  ["humidity", "relative humidity", fraction.range],
  ["tapWater", "tap water temperature", { ...celsius.range, min: 0, max: 60 }],
  ["grain", "grain temperature", { ...celsius.range, min: -20, max: 60 }],
];
