import type { Dimension, FigureName } from "@/lib/calc/ledger";

/** What kind of number each figure of a profile is. */
export const FIGURE_DIMENSION: Readonly<Record<FigureName, Dimension>> = {
  "kettle.heatShare": "fraction",
  "kettle.lossCoefficient": "heatLoss",
  "kettle.boilOff": "evaporation",
  "kettle.trub": "volume",
  "kettle.transfer": "volume",
  "lauter.absorption": "thickness",
  "lauter.deadSpace": "volume",
  "lauter.bypass": "fraction",
  "lauter.conversion": "fraction",
  hopAbsorption: "thickness",
  "chiller.conductance": "heatLoss",
  "fermenter.left": "volume",
};
