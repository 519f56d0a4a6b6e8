import type { Ion, Salt } from "@/lib/calc/water";

/**
 * mg/L of an ion from 1 g of salt in 1 L. Stoichiometry with the IUPAC 2021 abridged atomic weights, worked by hand
 * (docs/sources.md#iupac-2021); the tolerance is that of the last weight.
 */
export const IONS_FROM_ONE_GRAM: readonly {
  readonly salt: Salt;
  readonly ion: Ion;
  readonly milligrams: number;
  readonly working: string;
}[] = [
  { salt: "gypsum", ion: "calcium", milligrams: 232.8, working: "1000 × 40.078 / 172.164" },
  { salt: "gypsum", ion: "sulfate", milligrams: 557.9, working: "1000 × 96.056 / 172.164" },
  { salt: "calciumChlorideDihydrate", ion: "calcium", milligrams: 272.6, working: "1000 × 40.078 / 147.008" },
  { salt: "calciumChlorideDihydrate", ion: "chloride", milligrams: 482.3, working: "1000 × 70.9 / 147.008" },
  { salt: "epsomSalt", ion: "magnesium", milligrams: 98.6, working: "1000 × 24.305 / 246.466" },
  { salt: "epsomSalt", ion: "sulfate", milligrams: 389.7, working: "1000 × 96.056 / 246.466" },
  { salt: "tableSalt", ion: "sodium", milligrams: 393.4, working: "1000 × 22.990 / 58.44" },
  { salt: "tableSalt", ion: "chloride", milligrams: 606.6, working: "1000 × 35.45 / 58.44" },
  { salt: "bakingSoda", ion: "sodium", milligrams: 273.7, working: "1000 × 22.990 / 84.006" },
  { salt: "bakingSoda", ion: "bicarbonate", milligrams: 726.3, working: "1000 × 61.016 / 84.006" },
  { salt: "chalk", ion: "calcium", milligrams: 400.4, working: "1000 × 40.078 / 100.086" },
  { salt: "chalk", ion: "bicarbonate", milligrams: 1219.3, working: "1000 × 2 × 61.016 / 100.086" },
  { salt: "slakedLime", ion: "calcium", milligrams: 540.9, working: "1000 × 40.078 / 74.092" },
  { salt: "slakedLime", ion: "bicarbonate", milligrams: 1647.0, working: "1000 × 2 × 61.016 / 74.092" },
];
