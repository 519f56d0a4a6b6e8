/** Exact definitions on which the conversions of US units rest (docs/sources.md#nist-sp-811). */
export const LITRES_PER_US_GALLON = 3.785411784;
/** The imperial gallon, by the same publication. */
export const LITRES_PER_IMPERIAL_GALLON = 4.54609;
export const US_QUARTS_PER_US_GALLON = 4;
export const US_FLUID_OUNCES_PER_US_GALLON = 128;
export const KILOGRAMS_PER_POUND = 0.45359237;
export const OUNCES_PER_POUND = 16;
export const METRES_PER_FOOT = 0.3048;

/** Pound-force on a square inch, kPa: exact pound, inch and standard gravity, 9.80665 m/s². */
export const KILOPASCALS_PER_PSI = (KILOGRAMS_PER_POUND * 9.80665) / 0.0254 ** 2 / 1000;
