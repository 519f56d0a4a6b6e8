export { bottlePressure, type BottlePressure } from "./bottle-pressure";
export { co2Volumes } from "./co2-volumes";
export { gaugePressure, SOLUBILITY_RANGE } from "./gauge-pressure";
export { CO2_FROM_SUGAR, primingSugar, type PrimingSugarKind } from "./priming-sugar";
export { residualCo2 } from "./residual-co2";
