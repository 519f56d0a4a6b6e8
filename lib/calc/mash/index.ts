export { REFERENCE_MASH, attenuationShift, type AttenuationShift } from "./attenuation-shift";
export { fermentability, type Fermentability, type Rest } from "./fermentability";
export { firstWortPlato } from "./first-wort-plato";
export { gristExtract } from "./grist-extract";
export { MASH_CURVE_RANGE, type MashCurve } from "./mash-curve";
export { MASHED_GRIST_RANGE, mashThicknessLimit, type MashThicknessLimit } from "./mash-thickness-limit";
export { GRAIN_DISPLACEMENT, mashVolume } from "./mash-volume";
export { starchConversion } from "./starch-conversion";
