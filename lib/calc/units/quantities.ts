import { defineQuantity, type Quantity } from "./quantity";

export type Litres = Quantity<"L">;
export const litres = defineQuantity("volume", { unit: "L", min: 0, max: 100000 });

export type Kilograms = Quantity<"kg">;
export const kilograms = defineQuantity("mass", { unit: "kg", min: 0, max: 100000 });

export type Grams = Quantity<"g">;
export const grams = defineQuantity("mass", { unit: "g", min: 0, max: 10000000 });

export type Celsius = Quantity<"°C">;
export const celsius = defineQuantity("temperature", { unit: "°C", min: -30, max: 130 });

export type DegreesPlato = Quantity<"°P">;
// Apparent extract: beer lighter than water reads below zero.
export const degreesPlato = defineQuantity("extract", { unit: "°P", min: -9.1, max: 100 });

export type DegreesBrix = Quantity<"°Bx">;
export const degreesBrix = defineQuantity("refractometer reading", { unit: "°Bx", min: 0, max: 95 });

export type PointsPerPoundGallon = Quantity<"pt·US gal/lb">;
export const pointsPerPoundGallon = defineQuantity("extract", { unit: "pt·US gal/lb", min: 0, max: 50 });

export type SpecificGravity = Quantity<"SG">;
export const specificGravity = defineQuantity("specific gravity", { unit: "SG", min: 0.96, max: 1.2 });

export type Ebc = Quantity<"EBC">;
export const ebc = defineQuantity("colour", { unit: "EBC", min: 0, max: 4000 });

export type Srm = Quantity<"SRM">;
export const srm = defineQuantity("colour", { unit: "SRM", min: 0, max: 2000 });

export type Lovibond = Quantity<"°L">;
export const lovibond = defineQuantity("malt colour", { unit: "°L", min: 0, max: 1500 });

export type Ibu = Quantity<"IBU">;
export const ibu = defineQuantity("bitterness", { unit: "IBU", min: 0, max: 1000 });

export type Fraction = Quantity<"">;
export const fraction = defineQuantity("fraction", { unit: "", min: 0, max: 1 });

/** Apparent attenuation: a fraction that passes 1 where the beer is lighter than water. */
export const attenuation = defineQuantity("attenuation", { unit: "", min: 0, max: 1.25 });

export type Percent = Quantity<"%">;
export const percent = defineQuantity("percentage", { unit: "%", min: 0, max: 100 });

export type Seconds = Quantity<"s">;
export const seconds = defineQuantity("time", { unit: "s", min: 0, max: 100000000 });

export type Minutes = Quantity<"min">;
export const minutes = defineQuantity("time", { unit: "min", min: 0, max: 1000000 });

export type Days = Quantity<"d">;
export const days = defineQuantity("time", { unit: "d", min: 0, max: 10000 });

export type Watts = Quantity<"W">;
export const watts = defineQuantity("power", { unit: "W", min: 0, max: 10000000 });

export type Volts = Quantity<"V">;
export const volts = defineQuantity("voltage", { unit: "V", min: 0, max: 1000 });

export type WattsPerKelvin = Quantity<"W/K">;
export const wattsPerKelvin = defineQuantity("heat transfer", { unit: "W/K", min: 0, max: 1000000 });

export type JoulesPerKelvin = Quantity<"J/K">;
export const joulesPerKelvin = defineQuantity("heat capacity", { unit: "J/K", min: 0, max: 1000000000 });

export type Kilojoules = Quantity<"kJ">;
export const kilojoules = defineQuantity("heat", { unit: "kJ", min: 0, max: 100000000 });

export type KilowattHours = Quantity<"kWh">;
export const kilowattHours = defineQuantity("energy", { unit: "kWh", min: 0, max: 1000000 });

export type JoulesPerKilogramKelvin = Quantity<"J/(kg·K)">;
export const joulesPerKilogramKelvin = defineQuantity("specific heat", { unit: "J/(kg·K)", min: 100, max: 5000 });

export type MilligramsPerLitre = Quantity<"mg/L">;
export const milligramsPerLitre = defineQuantity("concentration", { unit: "mg/L", min: 0, max: 10000 });

export type GramsPerLitre = Quantity<"g/L">;
export const gramsPerLitre = defineQuantity("concentration", { unit: "g/L", min: 0, max: 1000 });

/** Hardness or alkalinity, each degree 10 mg/L of quicklime. */
export type GermanDegrees = Quantity<"°dH">;
export const germanDegrees = defineQuantity("hardness", { unit: "°dH", min: 0, max: 600 });

/** Base that moves a kilogram of mashed malt by one unit of pH. */
export type MilliequivalentsPerKilogramPh = Quantity<"mEq/(kg·pH)">;
export const milliequivalentsPerKilogramPh = defineQuantity("buffering", { unit: "mEq/(kg·pH)", min: 0, max: 200 });

/** Room temperature, 20 to 25 °C, unless a name says otherwise. */
export type Ph = Quantity<"pH">;
export const ph = defineQuantity("pH", { unit: "pH", min: 0, max: 14 });

export type Milliequivalents = Quantity<"mEq">;
// Signed: acid counts up, base counts down.
export const milliequivalents = defineQuantity("charge", { unit: "mEq", min: -1000000000, max: 1000000000 });

export type Millilitres = Quantity<"mL">;
export const millilitres = defineQuantity("volume", { unit: "mL", min: 0, max: 1000000 });

export type MilliequivalentsPerLitre = Quantity<"mEq/L">;
export const milliequivalentsPerLitre = defineQuantity("charge", { unit: "mEq/L", min: 0, max: 1000 });

export type Metres = Quantity<"m">;
export const metres = defineQuantity("altitude", { unit: "m", min: -450, max: 6000 });

export type SquareMetres = Quantity<"m²">;
export const squareMetres = defineQuantity("area", { unit: "m²", min: 0, max: 100 });

export type MetresPerSecond = Quantity<"m/s">;
export const metresPerSecond = defineQuantity("air speed", { unit: "m/s", min: 0, max: 20 });

export type Kilopascals = Quantity<"kPa">;
export const kilopascals = defineQuantity("pressure", { unit: "kPa", min: 0, max: 2000 });

export type Bar = Quantity<"bar">;
export const bar = defineQuantity("gauge pressure", { unit: "bar", min: -1.1, max: 25 });

export type VolumesCo2 = Quantity<"volumes">;
export const volumesCo2 = defineQuantity("carbonation", { unit: "volumes", min: 0, max: 10 });

export type LitresPerKilogram = Quantity<"L/kg">;
export const litresPerKilogram = defineQuantity("volume per mass", { unit: "L/kg", min: 0, max: 20 });

export type KilogramsPerHour = Quantity<"kg/h">;
export const kilogramsPerHour = defineQuantity("evaporation rate", { unit: "kg/h", min: 0, max: 10000 });

export type LitresPerMinute = Quantity<"L/min">;
export const litresPerMinute = defineQuantity("flow", { unit: "L/min", min: 0, max: 10000 });

export type KilogramsPerLitre = Quantity<"kg/L">;
export const kilogramsPerLitre = defineQuantity("density", { unit: "kg/L", min: 0.5, max: 2 });

export type PerMinute = Quantity<"1/min">;
export const perMinute = defineQuantity("rate", { unit: "1/min", min: 0, max: 100 });

export type KilocaloriesPerLitre = Quantity<"kcal/L">;
export const kilocaloriesPerLitre = defineQuantity("energy content", { unit: "kcal/L", min: 0, max: 10000 });

export type MillionPerMlPlato = Quantity<"million/(mL·°P)">;
export const millionPerMlPlato = defineQuantity("pitch rate", { unit: "million/(mL·°P)", min: 0, max: 10 });

export type BillionCells = Quantity<"10⁹">;
export const billionCells = defineQuantity("yeast cells", { unit: "10⁹", min: 0, max: 1000000000 });
