export { BEER_COLOUR_RANGE, beerTransmission } from "./beer-transmission";
export { beerSrgb } from "./beer-srgb";
export { danielsSrm } from "./daniels-srm";
export { maltColourUnits, type ColouringMalt, type MaltColourUnits } from "./malt-colour-units";
export { MOREY_FITTED_TO, MOREY_RANGE, moreySrm } from "./morey-srm";
export { mosherSrm } from "./mosher-srm";
