import { fraction, type Fraction } from "@/lib/calc/units";
import { sameName } from "./ingredients";

/** A hop variety with the alpha acids of a usual crop; the lot's own figure stands on its packet. */
export interface HopVariety {
  readonly name: string;
  readonly alphaLow: Fraction;
  readonly alphaHigh: Fraction;
}

// From memory, as quoted in trade sheets; alpha acids vary with the crop.
const ROWS: readonly (readonly [name: string, alphaLow: number, alphaHigh: number])[] = [
  ["Admiral", 0.13, 0.16],
  ["Amarillo", 0.07, 0.11],
  ["Apollo", 0.15, 0.2],
  ["Aramis", 0.055, 0.085],
  ["Aurora", 0.07, 0.13],
  ["Azacca", 0.14, 0.16],
  ["Bramling Cross", 0.05, 0.08],
  ["Bravo", 0.14, 0.17],
  ["Brewer's Gold", 0.06, 0.11],
  ["Cascade", 0.045, 0.09],
  ["Cashmere", 0.075, 0.095],
  ["Celeia", 0.03, 0.07],
  ["Centennial", 0.07, 0.12],
  ["Challenger", 0.065, 0.09],
  ["Chinook", 0.115, 0.15],
  ["Citra", 0.1, 0.15],
  ["Cluster", 0.055, 0.085],
  ["Columbus (CTZ)", 0.14, 0.18],
  ["Comet", 0.08, 0.125],
  ["Crystal", 0.03, 0.06],
  ["East Kent Golding", 0.045, 0.065],
  ["Ekuanot", 0.13, 0.155],
  ["El Dorado", 0.14, 0.17],
  ["Ella", 0.13, 0.19],
  ["First Gold", 0.056, 0.095],
  ["Fuggle", 0.03, 0.06],
  ["Galaxy", 0.115, 0.16],
  ["Galena", 0.115, 0.14],
  ["Glacier", 0.033, 0.097],
  ["Green Bullet", 0.11, 0.15],
  ["Hallertau Blanc", 0.09, 0.12],
  ["Hallertau Mittelfrueh", 0.03, 0.055],
  ["Hallertau Tradition", 0.04, 0.07],
  ["Herkules", 0.12, 0.17],
  ["Hersbrucker", 0.015, 0.04],
  ["Huell Melon", 0.06, 0.08],
  ["Idaho 7", 0.09, 0.14],
  ["Liberty", 0.03, 0.065],
  ["Magnum", 0.11, 0.16],
  ["Mandarina Bavaria", 0.07, 0.1],
  ["Merkur", 0.12, 0.15],
  ["Mosaic", 0.105, 0.14],
  ["Motueka", 0.065, 0.085],
  ["Mt Hood", 0.04, 0.08],
  ["Nelson Sauvin", 0.12, 0.13],
  ["Northdown", 0.06, 0.096],
  ["Northern Brewer", 0.06, 0.1],
  ["Nugget", 0.095, 0.145],
  ["Pacific Gem", 0.13, 0.16],
  ["Pacific Jade", 0.12, 0.14],
  ["Perle", 0.04, 0.09],
  ["Pilgrim", 0.09, 0.13],
  ["Polaris", 0.18, 0.24],
  ["Premiant", 0.07, 0.1],
  ["Pride of Ringwood", 0.07, 0.11],
  ["Progress", 0.05, 0.08],
  ["Rakau", 0.1, 0.12],
  ["Riwaka", 0.045, 0.065],
  ["Saaz", 0.02, 0.05],
  ["Sabro", 0.12, 0.17],
  ["Santiam", 0.05, 0.08],
  ["Saphir", 0.02, 0.045],
  ["Simcoe", 0.11, 0.15],
  ["Sladek", 0.045, 0.09],
  ["Sorachi Ace", 0.1, 0.16],
  ["Spalt", 0.025, 0.055],
  ["Spalter Select", 0.03, 0.065],
  ["Sterling", 0.045, 0.09],
  ["Strisselspalt", 0.018, 0.04],
  ["Styrian Golding", 0.028, 0.06],
  ["Summit", 0.15, 0.18],
  ["Target", 0.09, 0.13],
  ["Tettnang", 0.025, 0.055],
  ["Topaz", 0.137, 0.19],
  ["US Golding", 0.04, 0.06],
  ["Vic Secret", 0.14, 0.21],
  ["Waimea", 0.16, 0.19],
  ["Wai-iti", 0.025, 0.035],
  ["Warrior", 0.145, 0.185],
  ["Willamette", 0.04, 0.065],
];

export const HOP_VARIETIES: readonly HopVariety[] = ROWS.map(([name, low, high]) => ({
  name,
  alphaLow: fraction(low),
  alphaHigh: fraction(high),
}));

export function findHopVariety(name: string): HopVariety | null {
  return HOP_VARIETIES.find((variety) => sameName(variety.name, name)) ?? null;
}
