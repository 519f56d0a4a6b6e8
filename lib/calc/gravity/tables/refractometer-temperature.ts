// Correction of a sucrose reading below 20 °C, % by mass: OIV-MA-AS2-02, table I (docs/sources.md#oiv-ma-as2-02). A column for each
// reading, a row for each degree; at 20 °C there is none by definition, and 18 and 19 °C lie on the line to it.
export const READINGS: readonly number[] = [10, 15, 20, 25, 30];
export const TEMPERATURES: readonly number[] = [5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 20];

// prettier-ignore
export const CORRECTIONS: readonly (readonly number[])[] = [
  [-0.82, -0.87, -0.92, -0.95, -0.99],
  [-0.80, -0.82, -0.87, -0.90, -0.94],
  [-0.74, -0.78, -0.82, -0.84, -0.88],
  [-0.69, -0.73, -0.76, -0.79, -0.82],
  [-0.64, -0.67, -0.71, -0.73, -0.75],
  [-0.59, -0.62, -0.65, -0.67, -0.69],
  [-0.54, -0.57, -0.59, -0.61, -0.63],
  [-0.49, -0.51, -0.53, -0.55, -0.56],
  [-0.43, -0.45, -0.47, -0.48, -0.50],
  [-0.38, -0.39, -0.40, -0.42, -0.43],
  [-0.32, -0.33, -0.34, -0.35, -0.36],
  [-0.26, -0.27, -0.28, -0.28, -0.29],
  [-0.20, -0.20, -0.21, -0.21, -0.22],
  [0, 0, 0, 0, 0],
];
