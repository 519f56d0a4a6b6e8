import { MOLAR_MASS } from "./molar-mass";

/** mg/L of calcium carbonate in a degree. */
export const CALCIUM_CARBONATE_PER_DEGREE = (10 * MOLAR_MASS.chalk) / MOLAR_MASS.quicklime;
