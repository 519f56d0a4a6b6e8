/**
 * Pairs of one quantity in two units, as NIST SP 811 (2008) and Handbook 44 print the factors, or exact by definition
 * (docs/sources.md#nist-sp-811). `there` and `back` are the printed texts of either side.
 */
export const CONVERSIONS = [
  { pair: "volume", metric: 3.785411784, us: 1, source: "US gallon, exact" },
  { pair: "imperial volume", metric: 4.54609, us: 1, source: "imperial gallon, exact" },
  { pair: "quarts", metric: 0.946352946, us: 1, source: "US quart, exact" },
  { pair: "fluid ounces", metric: 0.0295735295625, us: 1, source: "US fluid ounce, exact" },
  { pair: "mass", metric: 0.45359237, us: 1, source: "pound, exact" },
  { pair: "small mass", metric: 28.349523125, us: 1, source: "ounce, exact" },
  { pair: "temperature", metric: 0, us: 32, source: "ice point, by definition of the scale" },
  { pair: "temperature", metric: 100, us: 212, source: "steam point, by definition of the scale" },
  { pair: "altitude", metric: 1609.344, us: 5280, source: "mile, exact" },
  { pair: "absolute pressure", metric: 6.894757, us: 1, source: "NIST SP 811, table B.8" },
  { pair: "absolute pressure", metric: 101.325, us: 14.69595, source: "standard atmosphere" },
  { pair: "gauge pressure", metric: 0.06894757, us: 1, source: "NIST SP 811, table B.8" },
  { pair: "mash thickness", metric: 2.086351, us: 1, source: "quart over pound, by hand" },
  { pair: "hop rate", metric: 7.489152, us: 1, source: "NIST SP 811, table B.8: ounce per gallon" },
  { pair: "flow", metric: 3.785411784, us: 1, source: "US gallon, exact" },
] as const;

export type ConvertedPair = (typeof CONVERSIONS)[number]["pair"];

/** Malt colour, SRM of laboratory wort against °L: common practice, no source. */
export const MALT_COLOUR = [
  { lovibond: 2, srm: 1.949 },
  { lovibond: 60, srm: 80.516 },
  { lovibond: 7.943, srm: 10 },
] as const;
