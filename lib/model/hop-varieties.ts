import { fraction, type Fraction } from "@/lib/calc/units";

/** What a variety is mostly grown for. */
export type HopPurpose = "bittering" | "aroma" | "dual";

/** How well a variety keeps its alpha acids, as the trade says it. */
export type HopKeeping = "good" | "fair" | "poor";

interface Span<T> {
  readonly low: T;
  readonly high: T;
}

/** A hop variety with the analysis of a usual crop; the lot's own figures stand on its packet. */
export interface HopVariety {
  readonly name: string;
  readonly purpose: HopPurpose;
  readonly alphaLow: Fraction;
  readonly alphaHigh: Fraction;
  readonly beta: Span<Fraction>;
  /** Share of cohumulone in the alpha acids. */
  readonly cohumulone: Span<Fraction>;
  /** Total oil, mL in 100 g. */
  readonly oilMlPer100G: Span<number>;
  readonly keeping: HopKeeping;
  /** Share of the alpha acids lost in six months at 20 °C in the open. */
  readonly lossIn6Months: Fraction;
}

type Pair = readonly [low: number, high: number];
type Row = readonly [
  name: string,
  purpose: HopPurpose,
  alpha: Pair,
  beta: Pair,
  cohumulone: Pair,
  oil: Pair,
  keeping: HopKeeping,
  lossIn6Months: number,
];

// From memory, as quoted in trade sheets; every figure varies with the crop.
const ROWS: readonly Row[] = [
  ["Admiral", "bittering", [0.13, 0.16], [0.048, 0.061], [0.37, 0.45], [1, 1.7], "good", 0.15],
  ["Amarillo", "dual", [0.07, 0.11], [0.055, 0.08], [0.2, 0.25], [1, 2.3], "good", 0.25],
  ["Apollo", "bittering", [0.15, 0.2], [0.055, 0.08], [0.24, 0.28], [1.5, 2.5], "good", 0.15],
  ["Aramis", "dual", [0.055, 0.085], [0.03, 0.05], [0.2, 0.22], [1.2, 1.6], "fair", 0.35],
  ["Aurora", "dual", [0.07, 0.13], [0.027, 0.05], [0.2, 0.26], [0.9, 1.8], "good", 0.22],
  ["Azacca", "bittering", [0.14, 0.16], [0.04, 0.055], [0.38, 0.45], [1.6, 2.5], "fair", 0.3],
  ["Bramling Cross", "dual", [0.05, 0.08], [0.023, 0.032], [0.26, 0.35], [0.6, 1.2], "fair", 0.35],
  ["Bravo", "bittering", [0.14, 0.17], [0.03, 0.05], [0.28, 0.35], [1.6, 3.5], "fair", 0.3],
  ["Brewer's Gold", "dual", [0.06, 0.11], [0.03, 0.06], [0.35, 0.48], [1.2, 2.2], "poor", 0.38],
  ["Cascade", "dual", [0.045, 0.09], [0.036, 0.075], [0.33, 0.4], [0.8, 2], "poor", 0.5],
  ["Cashmere", "dual", [0.075, 0.095], [0.033, 0.071], [0.22, 0.24], [1.2, 2.6], "fair", 0.3],
  ["Celeia", "aroma", [0.03, 0.07], [0.02, 0.04], [0.24, 0.29], [0.6, 2], "fair", 0.35],
  ["Centennial", "dual", [0.07, 0.12], [0.035, 0.055], [0.23, 0.3], [1.5, 2.5], "poor", 0.38],
  ["Challenger", "dual", [0.065, 0.09], [0.032, 0.045], [0.2, 0.25], [1, 1.7], "good", 0.25],
  ["Chinook", "bittering", [0.115, 0.15], [0.03, 0.04], [0.27, 0.35], [1, 2.5], "fair", 0.32],
  ["Citra", "dual", [0.1, 0.15], [0.03, 0.045], [0.2, 0.35], [1.5, 3], "good", 0.25],
  ["Cluster", "dual", [0.055, 0.085], [0.045, 0.055], [0.36, 0.42], [0.4, 0.8], "good", 0.17],
  ["Columbus (CTZ)", "bittering", [0.14, 0.18], [0.04, 0.06], [0.28, 0.35], [1.5, 4.5], "poor", 0.48],
  ["Comet", "dual", [0.08, 0.125], [0.03, 0.06], [0.33, 0.45], [1, 3.3], "poor", 0.51],
  ["Crystal", "aroma", [0.03, 0.06], [0.045, 0.08], [0.2, 0.26], [0.8, 2.1], "poor", 0.5],
  ["East Kent Golding", "aroma", [0.045, 0.065], [0.019, 0.035], [0.2, 0.3], [0.4, 1], "fair", 0.3],
  ["Ekuanot", "bittering", [0.13, 0.155], [0.04, 0.05], [0.31, 0.36], [2.5, 4.5], "fair", 0.3],
  ["El Dorado", "bittering", [0.14, 0.17], [0.06, 0.08], [0.28, 0.33], [2.5, 3.3], "fair", 0.28],
  ["Ella", "bittering", [0.13, 0.19], [0.048, 0.08], [0.33, 0.42], [2.4, 3.4], "fair", 0.28],
  ["First Gold", "dual", [0.056, 0.095], [0.023, 0.041], [0.31, 0.36], [0.7, 1.5], "good", 0.2],
  ["Fuggle", "aroma", [0.03, 0.06], [0.02, 0.03], [0.25, 0.32], [0.4, 1.4], "poor", 0.38],
  ["Galaxy", "bittering", [0.115, 0.16], [0.05, 0.085], [0.32, 0.42], [3, 5], "fair", 0.28],
  ["Galena", "bittering", [0.115, 0.14], [0.07, 0.09], [0.36, 0.42], [0.9, 1.3], "good", 0.18],
  ["Glacier", "dual", [0.033, 0.097], [0.054, 0.1], [0.11, 0.16], [0.7, 1.6], "fair", 0.3],
  ["Green Bullet", "dual", [0.11, 0.15], [0.065, 0.07], [0.38, 0.43], [1, 1.6], "fair", 0.33],
  ["Hallertau Blanc", "dual", [0.09, 0.12], [0.045, 0.07], [0.22, 0.27], [0.8, 2.2], "fair", 0.3],
  ["Hallertau Mittelfrueh", "aroma", [0.03, 0.055], [0.03, 0.05], [0.18, 0.28], [0.7, 1.3], "poor", 0.48],
  ["Hallertau Tradition", "aroma", [0.04, 0.07], [0.03, 0.06], [0.24, 0.3], [0.5, 1.9], "fair", 0.3],
  ["Herkules", "bittering", [0.12, 0.17], [0.04, 0.055], [0.32, 0.38], [1.4, 2.4], "good", 0.2],
  ["Hersbrucker", "aroma", [0.015, 0.04], [0.025, 0.06], [0.17, 0.25], [0.5, 1.3], "poor", 0.42],
  ["Huell Melon", "dual", [0.06, 0.08], [0.06, 0.08], [0.25, 0.3], [0.8, 2.1], "fair", 0.3],
  ["Idaho 7", "dual", [0.09, 0.14], [0.035, 0.05], [0.3, 0.4], [1, 2.5], "fair", 0.3],
  ["Liberty", "aroma", [0.03, 0.065], [0.03, 0.04], [0.24, 0.3], [0.6, 1.8], "poor", 0.55],
  ["Magnum", "dual", [0.11, 0.16], [0.05, 0.07], [0.21, 0.29], [1.6, 3], "good", 0.18],
  ["Mandarina Bavaria", "dual", [0.07, 0.1], [0.04, 0.07], [0.31, 0.35], [0.8, 2.2], "fair", 0.3],
  ["Merkur", "bittering", [0.12, 0.15], [0.05, 0.07], [0.17, 0.2], [1.4, 2.2], "good", 0.22],
  ["Mosaic", "dual", [0.105, 0.14], [0.03, 0.045], [0.22, 0.3], [0.8, 3], "good", 0.25],
  ["Motueka", "dual", [0.065, 0.085], [0.05, 0.06], [0.28, 0.3], [0.8, 1], "fair", 0.35],
  ["Mt Hood", "dual", [0.04, 0.08], [0.05, 0.08], [0.21, 0.24], [1, 1.7], "poor", 0.45],
  ["Nelson Sauvin", "dual", [0.12, 0.13], [0.06, 0.08], [0.22, 0.26], [1, 1.2], "fair", 0.27],
  ["Northdown", "dual", [0.06, 0.096], [0.04, 0.055], [0.24, 0.32], [1.2, 2.5], "fair", 0.28],
  ["Northern Brewer", "dual", [0.06, 0.1], [0.03, 0.05], [0.24, 0.33], [1, 2.2], "good", 0.22],
  ["Nugget", "dual", [0.095, 0.145], [0.04, 0.058], [0.22, 0.3], [0.9, 2.5], "good", 0.25],
  ["Pacific Gem", "bittering", [0.13, 0.16], [0.07, 0.09], [0.35, 0.4], [0.8, 1.6], "good", 0.22],
  ["Pacific Jade", "bittering", [0.12, 0.14], [0.07, 0.08], [0.22, 0.26], [1.4, 1.6], "fair", 0.27],
  ["Perle", "dual", [0.04, 0.09], [0.025, 0.05], [0.27, 0.35], [0.5, 1.5], "good", 0.17],
  ["Pilgrim", "dual", [0.09, 0.13], [0.042, 0.052], [0.36, 0.38], [1.2, 2.4], "fair", 0.33],
  ["Polaris", "bittering", [0.18, 0.24], [0.045, 0.07], [0.22, 0.29], [2, 5], "good", 0.2],
  ["Premiant", "dual", [0.07, 0.1], [0.035, 0.06], [0.18, 0.23], [1, 2], "good", 0.25],
  ["Pride of Ringwood", "dual", [0.07, 0.11], [0.04, 0.06], [0.32, 0.4], [0.9, 2], "poor", 0.48],
  ["Progress", "dual", [0.05, 0.08], [0.02, 0.03], [0.25, 0.33], [0.6, 1.2], "fair", 0.28],
  ["Rakau", "dual", [0.1, 0.12], [0.05, 0.07], [0.23, 0.26], [1.8, 2.2], "fair", 0.3],
  ["Riwaka", "aroma", [0.045, 0.065], [0.04, 0.05], [0.29, 0.36], [0.8, 1.6], "fair", 0.35],
  ["Saaz", "aroma", [0.02, 0.05], [0.03, 0.06], [0.21, 0.28], [0.4, 1], "poor", 0.5],
  ["Sabro", "bittering", [0.12, 0.17], [0.04, 0.07], [0.2, 0.24], [2.5, 3.7], "fair", 0.3],
  ["Santiam", "dual", [0.05, 0.08], [0.053, 0.085], [0.18, 0.24], [1.3, 2.1], "poor", 0.48],
  ["Saphir", "aroma", [0.02, 0.045], [0.04, 0.07], [0.12, 0.17], [0.8, 1.4], "poor", 0.45],
  ["Simcoe", "dual", [0.11, 0.15], [0.03, 0.05], [0.15, 0.21], [0.8, 3.2], "fair", 0.27],
  ["Sladek", "dual", [0.045, 0.09], [0.04, 0.07], [0.23, 0.3], [1, 2], "fair", 0.3],
  ["Sorachi Ace", "dual", [0.1, 0.16], [0.06, 0.08], [0.23, 0.28], [2, 3], "fair", 0.28],
  ["Spalt", "aroma", [0.025, 0.055], [0.03, 0.05], [0.22, 0.29], [0.5, 1.1], "poor", 0.48],
  ["Spalter Select", "aroma", [0.03, 0.065], [0.025, 0.05], [0.21, 0.27], [0.6, 0.9], "poor", 0.38],
  ["Sterling", "dual", [0.045, 0.09], [0.04, 0.06], [0.21, 0.28], [0.6, 1.9], "fair", 0.33],
  ["Strisselspalt", "aroma", [0.018, 0.04], [0.03, 0.06], [0.2, 0.25], [0.6, 0.9], "poor", 0.36],
  ["Styrian Golding", "aroma", [0.028, 0.06], [0.02, 0.03], [0.25, 0.3], [0.5, 1], "fair", 0.35],
  ["Summit", "bittering", [0.15, 0.18], [0.04, 0.065], [0.26, 0.33], [1.5, 2.5], "good", 0.18],
  ["Target", "dual", [0.09, 0.13], [0.043, 0.057], [0.29, 0.4], [1.2, 1.7], "poor", 0.48],
  ["Tettnang", "aroma", [0.025, 0.055], [0.03, 0.05], [0.22, 0.28], [0.4, 0.9], "poor", 0.42],
  ["Topaz", "bittering", [0.137, 0.19], [0.06, 0.09], [0.45, 0.52], [0.8, 2.2], "fair", 0.28],
  ["US Golding", "aroma", [0.04, 0.06], [0.02, 0.03], [0.2, 0.25], [0.4, 1], "fair", 0.34],
  ["Vic Secret", "bittering", [0.14, 0.21], [0.06, 0.09], [0.51, 0.57], [1.9, 3], "fair", 0.28],
  ["Waimea", "bittering", [0.16, 0.19], [0.07, 0.09], [0.22, 0.25], [1.8, 2.2], "fair", 0.27],
  ["Wai-iti", "aroma", [0.025, 0.035], [0.045, 0.055], [0.22, 0.24], [1.4, 1.7], "poor", 0.4],
  ["Warrior", "bittering", [0.145, 0.185], [0.043, 0.06], [0.22, 0.28], [1, 2], "good", 0.24],
  ["Willamette", "aroma", [0.04, 0.065], [0.03, 0.045], [0.28, 0.35], [0.6, 1.6], "poor", 0.37],
];

export const HOP_VARIETIES: readonly HopVariety[] = ROWS.map(
  ([name, purpose, [alphaLow, alphaHigh], beta, cohumulone, [oilLow, oilHigh], keeping, lossIn6Months]) => ({
    name,
    purpose,
    alphaLow: fraction(alphaLow),
    alphaHigh: fraction(alphaHigh),
    beta: fractions(beta),
    cohumulone: fractions(cohumulone),
    oilMlPer100G: { low: oilLow, high: oilHigh },
    keeping,
    lossIn6Months: fraction(lossIn6Months),
  }),
);

function fractions([low, high]: Pair): Span<Fraction> {
  return { low: fraction(low), high: fraction(high) };
}
