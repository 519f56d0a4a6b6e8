/** Density of water, kg/m³, Kell 1975, equation 16 (docs/sources.md#kell-1975), worked from the printed coefficients. */
export const WATER_KELL = [
  { celsius: 0, kgPerM3: 999.84 },
  { celsius: 20, kgPerM3: 998.204 },
  { celsius: 25, kgPerM3: 997.045 },
  { celsius: 30, kgPerM3: 995.647 },
  { celsius: 50, kgPerM3: 988.036 },
  { celsius: 60, kgPerM3: 983.199 },
  { celsius: 80, kgPerM3: 971.798 },
  { celsius: 90, kgPerM3: 965.32 },
] as const;

/** The same by other equations. Tanaka's greatest density is 999.975 kg/m³, Kell's 999.972: so far the scales are apart. */
export const WATER_OTHERS = [
  { celsius: 10, kgPerM3: 999.7027, within: 0.0035, source: "Tanaka et al. 2001, Metrologia 38:301" },
  { celsius: 15, kgPerM3: 999.1026, within: 0.0035, source: "Tanaka et al. 2001, Metrologia 38:301" },
  { celsius: 140 / 9, kgPerM3: 999.017, within: 0.0035, source: "Tanaka et al. 2001 at 60 °F" },
  { celsius: 25, kgPerM3: 997.047, within: 0.01, source: "IAPWS-95 / CRC Handbook" },
  { celsius: 100, kgPerM3: 958.35, within: 0.05, source: "IAPWS-95, saturated liquid" },
] as const;

/** Density of sucrose solutions at 20 °C, kg/L. */
export const SUCROSE_20 = [
  { plato: 20, kgPerL: 1.081, within: 0.0001, source: "CRC Handbook, concentrative properties of sucrose" },
  { plato: 5, kgPerL: 1.01785 * 0.999972, within: 3e-5, source: "NBS Circular C440, table 113, from memory" },
  { plato: 15, kgPerL: 1.05917 * 0.999972, within: 3e-5, source: "NBS Circular C440, table 113, from memory" },
  { plato: 25, kgPerL: 1.10356 * 0.999972, within: 3e-5, source: "NBS Circular C440, table 113, from memory" },
] as const;

/** SG 20/20 against °P. */
export const GRAVITY_OF_PLATO = [
  { plato: 0, sg: 1, within: 0, source: "definition" },
  { plato: 10, sg: 1.04003, within: 2e-5, source: "ASBC tables, apparent SG 20/20 in air" },
  { plato: 15, sg: 1.06112, within: 2e-5, source: "ASBC tables, apparent SG 20/20 in air" },
  { plato: 1, sg: 1.00388, within: 3e-5, source: "Lincoln 1987" },
  { plato: 8, sg: 1.0318, within: 3e-5, source: "Lincoln 1987" },
  { plato: 11, sg: 1.04419, within: 3e-5, source: "Lincoln 1987" },
  { plato: 14, sg: 1.05684, within: 3e-5, source: "Lincoln 1987" },
  { plato: 16, sg: 1.06543, within: 3e-5, source: "Lincoln 1987" },
  { plato: 18, sg: 1.07414, within: 3e-5, source: "Lincoln 1987" },
  { plato: 22, sg: 1.09195, within: 3e-5, source: "Lincoln 1987" },
] as const;

/** °P against SG 20/20; the cubic is the ASBC's own fit to its tables. */
export const PLATO_OF_GRAVITY = [
  { sg: 1.008, plato: 2.052, within: 0.005, source: "ASBC cubic" },
  { sg: 1.012, plato: 3.069, within: 0.005, source: "ASBC cubic" },
  { sg: 1.02, plato: 5.081, within: 0.005, source: "ASBC cubic" },
  { sg: 1.03, plato: 7.559, within: 0.005, source: "ASBC cubic" },
  { sg: 1.06, plato: 14.742, within: 0.005, source: "ASBC cubic" },
  { sg: 1.07, plato: 17.056, within: 0.005, source: "ASBC cubic" },
  { sg: 1.09, plato: 21.569, within: 0.005, source: "ASBC cubic" },
  // Below 1: the same cubic by hand, −616.868 + 1111.14 S − 630.272 S² + 135.9975 S³; no table is printed there,
  // and two fits carried on may part by a hundredth.
  { sg: 0.9955, plato: -1.17, within: 0.01, source: "ASBC cubic carried on" },
  { sg: 0.99, plato: -2.611, within: 0.01, source: "ASBC cubic carried on" },
  { sg: 0.981, plato: -4.997, within: 0.01, source: "ASBC cubic carried on" },
] as const;

/**
 * Density of sucrose solutions when hot, kg/m³, worked by hand from the polynomial printed in Bubník et al. 1995, page 164
 * (docs/sources.md#bubnik-1995), with the water density of Kell.
 */
export const SUCROSE_HOT = [
  { plato: 10, celsius: 0, kgPerM3: 1040.98 },
  { plato: 10, celsius: 40, kgPerM3: 1031.39 },
  { plato: 10, celsius: 60, kgPerM3: 1021.94 },
  { plato: 10, celsius: 80, kgPerM3: 1010.27 },
  { plato: 20, celsius: 0, kgPerM3: 1085.1 },
  { plato: 20, celsius: 40, kgPerM3: 1073.5 },
  { plato: 20, celsius: 60, kgPerM3: 1063.59 },
  { plato: 20, celsius: 80, kgPerM3: 1051.64 },
  { plato: 20, celsius: 100, kgPerM3: 1037.92 },
  { plato: 30, celsius: 80, kgPerM3: 1096.22 },
] as const;
