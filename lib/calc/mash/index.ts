export { firstWortPlato } from "./first-wort-plato";
export { gristPotential } from "./grist-potential";
export { GRAIN_DISPLACEMENT, mashVolume } from "./mash-volume";
