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
