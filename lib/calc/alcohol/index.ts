export { alcoholByVolume } from "./alcohol-by-volume";
export { alcoholByVolumeLinear } from "./alcohol-by-volume-linear";
export { alcoholByWeight } from "./alcohol-by-weight";
export { apparentAttenuation } from "./apparent-attenuation";
export { energyPerLitre } from "./energy-per-litre";
export { FERMENTED_RANGE, type Extracts } from "./extracts";
export { realAttenuation } from "./real-attenuation";
export { realExtract } from "./real-extract";
