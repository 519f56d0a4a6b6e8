export { beerLab, type Lab } from "./beer-lab";
export { BEER_COLOUR_RANGE, beerTransmission } from "./beer-transmission";
export { beerSrgb } from "./beer-srgb";
export { colourDifference, LAB_RANGE } from "./colour-difference";
export { DANIELS_RANGE, danielsSrm } from "./daniels-srm";
export { POUNDS_PER_GALLON, maltColourUnits, type ColouringMalt, type MaltColourUnits } from "./malt-colour-units";
export { MOREY_FITTED_TO, MOREY_RANGE, moreySrm } from "./morey-srm";
export { MOSHER_RANGE, mosherSrm } from "./mosher-srm";
export { type Viewing } from "./viewing";
