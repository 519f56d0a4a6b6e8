export { apparentAttenuationOf, ATTENUATION_RANGE, type FermentablePart } from "./apparent-attenuation-of";
export { cellsInPack, PACK_RANGE, type CountedCells, type YeastForm } from "./cells-in-pack";
export { cellsToPitch } from "./cells-to-pitch";
export { dayOfShare, FALLEN_RANGE } from "./day-of-share";
export {
  DONE_WITHIN_PLATO,
  fermentationCurve,
  LOGGED_RANGE,
  type FermentationCurve,
  type FittedFermentation,
  type LoggedGravity,
} from "./fermentation-curve";
export { fermentedShare } from "./fermented-share";
export { heatOfFermentation } from "./heat-of-fermentation";
export { PACK_CELLS_RANGE, packsToPitch } from "./packs-to-pitch";
export { COURSE_RANGE, platoOnDay } from "./plato-on-day";
export { predictedFinalPlato } from "./predicted-final-plato";
export { stableGravity, STABLE_FOR_DAYS, type StableGravity } from "./stable-gravity";
export { STARTER_RANGE, starterGrowth, type StarterGrowth, type StarterMethod } from "./starter-growth";
