/** Morey 1995, 1.4922 MCU^0.6859 (docs/sources.md#morey-1995), worked by hand. */
export const MOREY = [
  { mcu: 5, srm: 4.5 },
  { mcu: 20, srm: 11.647 },
  { mcu: 40, srm: 18.736 },
] as const;

/** deLange 2016 (docs/sources.md#delange-2016): absorbance of the average beer in 1 cm, worked by hand. */
export const ABSORBANCE = [
  { srm: 12.7, nm: 430, absorbance: 1, within: 1e-6 },
  { srm: 10, nm: 380, absorbance: 1.7448, within: 5e-5 },
  { srm: 10, nm: 600, absorbance: 0.096902, within: 5e-5 },
  { srm: 10, nm: 650, absorbance: 0.052712, within: 5e-5 },
  { srm: 10, nm: 780, absorbance: 0.010825, within: 5e-5 },
] as const;

/** CIE 1931 standard observer of 2° (docs/sources.md#cie-1931), printed rows. */
export const OBSERVER = [
  { nm: 450, x: 0.3362, y: 0.038, z: 1.7721 },
  { nm: 500, x: 0.0049, y: 0.323, z: 0.272 },
  { nm: 550, x: 0.43345, y: 0.99495, z: 0.00875 },
  { nm: 600, x: 1.0622, y: 0.631, z: 0.0008 },
] as const;

/**
 * sRGB of the average beer in daylight D65 on white, 380 to 780 nm in 5 nm, negative channels clipped. Computed with another
 * program and numerical library from the same published tables; ±2 is a difference nobody sees.
 */
export const BEER_SRGB = [
  { srm: 1, pathCm: 5, rgb: [250, 232, 182] },
  { srm: 2, pathCm: 5, rgb: [244, 209, 128] },
  { srm: 5, pathCm: 5, rgb: [224, 154, 3] },
  { srm: 6, pathCm: 5, rgb: [217, 138, 0] },
  { srm: 8, pathCm: 5, rgb: [201, 112, 0] },
  { srm: 10, pathCm: 5, rgb: [186, 91, 0] },
  { srm: 15, pathCm: 5, rgb: [153, 52, 0] },
  { srm: 20, pathCm: 5, rgb: [125, 25, 0] },
  { srm: 30, pathCm: 5, rgb: [84, 0, 0] },
  { srm: 40, pathCm: 5, rgb: [57, 0, 0] },
  { srm: 2, pathCm: 1, rgb: [253, 246, 223] },
  { srm: 9, pathCm: 1, rgb: [245, 214, 137] },
  { srm: 14, pathCm: 1, rgb: [239, 193, 93] },
  { srm: 33, pathCm: 1, rgb: [212, 130, 0] },
] as const;

/**
 * CIELAB of the average beer, computed with another program and numerical library from the same published tables, each against
 * its own white.
 */
export const BEER_LAB = [
  { srm: 4, pathCm: 5, viewing: "D65/2°", lightness: 73.64, a: 11.89, b: 66.66 },
  { srm: 20, pathCm: 5, viewing: "D65/2°", lightness: 26.78, a: 41.01, b: 45.91 },
  { srm: 3, pathCm: 1, viewing: "C/10°", lightness: 94.76, a: -0.88, b: 17.14 },
  { srm: 10, pathCm: 1, viewing: "C/10°", lightness: 84.24, a: 3.4, b: 45.51 },
] as const;

/**
 * Test pairs of CIEDE2000, Sharma, Wu and Dalal 2005, table 1 (docs/sources.md#sharma-2005): L, a, b of two colours and their
 * difference. Pairs 1 to 6 and 17 to 20 read in copies of the table, the others from memory.
 */
// prettier-ignore
export const COLOUR_PAIRS = [
  [50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425],
  [50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615],
  [50, 2.8361, -74.02, 50, 0, -82.7485, 3.4412],
  [50, -1.3802, -84.2814, 50, 0, -82.7485, 1],
  [50, -1.1848, -84.8006, 50, 0, -82.7485, 1],
  [50, -0.9009, -85.5211, 50, 0, -82.7485, 1],
  [50, 0, 0, 50, -1, 2, 2.3669],
  [50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792],
  [50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195],
  [50, -0.001, 2.49, 50, 0.0009, -2.49, 4.8045],
  [50, -0.001, 2.49, 50, 0.0011, -2.49, 4.7461],
  [50, 2.5, 0, 50, 0, -2.5, 4.3065],
  [50, 2.5, 0, 73, 25, -18, 27.1492],
  [50, 2.5, 0, 61, -5, 29, 22.8977],
  [50, 2.5, 0, 56, -27, -3, 31.903],
  [50, 2.5, 0, 58, 24, 15, 19.4535],
  [60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644],
  [63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.263],
  [61.2901, 3.7196, -5.3901, 61.4292, 2.248, -4.962, 1.8731],
  [35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645],
  [22.7233, 20.0904, -46.694, 23.0331, 14.973, -42.5619, 2.0373],
  [36.4612, 47.858, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146],
  [90.8027, -2.0831, 1.441, 91.1528, -1.6435, 0.0447, 1.4441],
  [90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381],
  [6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377],
  [2.0776, 0.0795, -1.135, 0.9033, -0.0636, -0.5514, 0.9082],
] as const;
