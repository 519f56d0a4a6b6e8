export type Station = "water" | "mash" | "lauter" | "kettle" | "stand" | "fermenter" | "package";

export const STATIONS: readonly Station[] = ["water", "mash", "lauter", "kettle", "stand", "fermenter", "package"];

/** What kind of number a quantity is; the screen picks the unit and the digits from it. */
export type Dimension =
  | "volume"
  | "mass"
  | "grams"
  | "temperature"
  | "extract"
  | "colour"
  | "bitterness"
  | "minutes"
  | "power"
  | "energy"
  | "concentration"
  | "ph"
  | "fraction"
  | "alcohol"
  | "thickness"
  | "cells"
  | "carbonation"
  | "pressure"
  | "energyContent"
  | "heatLoss"
  | "heatCapacity"
  | "evaporation"
  // Of a judge's sheet.
  | "points";

interface CatalogueEntry {
  readonly station: Station;
  readonly label: string;
  readonly dimension: Dimension;
}

/** Every number the ledger reports, in the order of the process. Values are in the library's units. */
export const QUANTITIES = {
  "water.total": { station: "water", label: "Water in all", dimension: "volume" },
  "water.mash": { station: "water", label: "Mash water", dimension: "volume" },
  "water.sparge": { station: "water", label: "Sparge water", dimension: "volume" },
  "water.topUp": { station: "water", label: "Water after the boil", dimension: "volume" },
  "water.calcium": { station: "water", label: "Calcium", dimension: "concentration" },
  "water.magnesium": { station: "water", label: "Magnesium", dimension: "concentration" },
  "water.sodium": { station: "water", label: "Sodium", dimension: "concentration" },
  "water.sulfate": { station: "water", label: "Sulfate", dimension: "concentration" },
  "water.chloride": { station: "water", label: "Chloride", dimension: "concentration" },
  "water.bicarbonate": { station: "water", label: "Bicarbonate", dimension: "concentration" },
  "water.residualAlkalinity": { station: "water", label: "Residual alkalinity, as CaCO₃", dimension: "concentration" },
  "water.strike": { station: "water", label: "Strike temperature", dimension: "temperature" },
  "water.heatingTime": { station: "water", label: "Time to heat the strike water", dimension: "minutes" },
  "mash.grist": { station: "mash", label: "Grist", dimension: "mass" },
  "mash.thickness": { station: "mash", label: "Mash thickness", dimension: "thickness" },
  "mash.volume": { station: "mash", label: "Mash with grain", dimension: "volume" },
  "mash.potential": { station: "mash", label: "Extract in the grist", dimension: "mass" },
  "mash.dissolved": { station: "mash", label: "Extract dissolved", dimension: "mass" },
  "mash.firstWort": { station: "mash", label: "First wort", dimension: "extract" },
  "mash.ph": { station: "mash", label: "Mash pH, at room temperature", dimension: "ph" },
  "mash.conversion": { station: "mash", label: "Starch converted", dimension: "fraction" },
  "mash.time": { station: "mash", label: "Mash time with heating between rests", dimension: "minutes" },
  "lauter.runOff": { station: "lauter", label: "Run-off, at 20 °C", dimension: "volume" },
  "lauter.retained": { station: "lauter", label: "Wort left in the grain, at 20 °C", dimension: "volume" },
  "lauter.lost": { station: "lauter", label: "Extract left in the grain", dimension: "mass" },
  "lauter.efficiency": { station: "lauter", label: "Lauter efficiency", dimension: "fraction" },
  "kettle.preBoil": { station: "kettle", label: "Before the boil, hot", dimension: "volume" },
  "kettle.preBoilGravity": { station: "kettle", label: "Gravity before the boil", dimension: "extract" },
  "kettle.boilingPoint": { station: "kettle", label: "Boils at", dimension: "temperature" },
  "kettle.power": { station: "kettle", label: "Heater power on this supply", dimension: "power" },
  "kettle.heatingTime": { station: "kettle", label: "Time to the boil", dimension: "minutes" },
  "kettle.evaporated": { station: "kettle", label: "Boiled off, at 20 °C", dimension: "volume" },
  "kettle.postBoil": { station: "kettle", label: "End of boil, hot", dimension: "volume" },
  "kettle.postBoilGravity": { station: "kettle", label: "Gravity at the end of the boil", dimension: "extract" },
  "stand.lost": { station: "stand", label: "Left with trub, hops and hoses, at 20 °C", dimension: "volume" },
  "stand.coolingTime": { station: "stand", label: "Time to the stand temperature", dimension: "minutes" },
  "stand.chillTime": { station: "stand", label: "Time to chill", dimension: "minutes" },
  "fermenter.volume": { station: "fermenter", label: "Into the fermenter, at 20 °C", dimension: "volume" },
  "fermenter.originalExtract": { station: "fermenter", label: "Original extract", dimension: "extract" },
  "fermenter.bitterness": { station: "fermenter", label: "Bitterness", dimension: "bitterness" },
  "fermenter.colour": { station: "fermenter", label: "Colour", dimension: "colour" },
  "fermenter.efficiency": { station: "fermenter", label: "Brewhouse efficiency", dimension: "fraction" },
  "fermenter.cells": { station: "fermenter", label: "Yeast to pitch", dimension: "cells" },
  "fermenter.attenuation": { station: "fermenter", label: "Apparent attenuation", dimension: "fraction" },
  "fermenter.finalExtract": { station: "fermenter", label: "Final gravity", dimension: "extract" },
  "package.volume": { station: "package", label: "Packaged", dimension: "volume" },
  "package.alcohol": { station: "package", label: "Alcohol by volume", dimension: "alcohol" },
  "package.energyContent": { station: "package", label: "Energy content", dimension: "energyContent" },
  "package.carbonation": { station: "package", label: "Carbonation", dimension: "carbonation" },
  "package.primingSugar": { station: "package", label: "Priming sugar", dimension: "grams" },
  "package.pressure": { station: "package", label: "Gauge pressure at the warmest temperature", dimension: "pressure" },
  "day.time": { station: "package", label: "Brew day", dimension: "minutes" },
  "day.energy": { station: "package", label: "Electricity for the brew day", dimension: "energy" },
} as const satisfies Record<string, CatalogueEntry>;

export type QuantityId = keyof typeof QUANTITIES;

export const QUANTITY_IDS = Object.keys(QUANTITIES) as readonly QuantityId[];
