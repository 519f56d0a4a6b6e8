export { apparentAttenuationOf, ATTENUATION_RANGE, type FermentablePart } from "./apparent-attenuation-of";
export { cellsToPitch } from "./cells-to-pitch";
export { predictedFinalPlato } from "./predicted-final-plato";
