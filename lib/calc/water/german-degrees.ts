import { defineQuantity, type Quantity } from "../units";
import { MOLAR_MASS } from "./molar-mass";

export type GermanDegrees = Quantity<"°dH">;

/** Hardness or alkalinity in German degrees, each 10 mg/L of quicklime. */
export const germanDegrees = defineQuantity("hardness", { unit: "°dH", min: 0, max: 561 });

/** mg/L of calcium carbonate in a degree. */
export const CALCIUM_CARBONATE_PER_DEGREE = (10 * MOLAR_MASS.chalk) / MOLAR_MASS.quicklime;
