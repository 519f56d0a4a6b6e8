import { requireInRange } from "../errors";
import { interpolateLinear } from "../numerics";
import {
  ebc,
  fraction,
  milliequivalentsPerKilogramPh,
  ph,
  type Ebc,
  type Fraction,
  type MilliequivalentsPerKilogramPh,
  type Ph,
} from "../units";

export const MALT_KINDS = [
  "base",
  "wheat",
  "munich",
  "kilned",
  "caramel",
  "roasted",
  "acidulated",
  "raw grain",
  "malt extract",
  "sugar",
] as const;

export type MaltKind = (typeof MALT_KINDS)[number];

/** How a malt buffers, for `MashedMalt`, and how far the guess may be off. */
export interface MaltAcidity {
  readonly distilledWaterPh: Ph;
  readonly buffering: MilliequivalentsPerKilogramPh;
  readonly lacticFraction: Fraction;
  /** Standard deviation between malts of the kind, pH. */
  readonly phDeviation: number;
  /** Standard deviation between malts of the kind, as a share of the buffering. */
  readonly bufferingDeviation: number;
}

interface KindAcidity {
  /** Colour, EBC, and distilled-water pH; flat beyond the ends. */
  readonly ph: readonly (readonly [number, number])[];
  /** Colour, EBC, and mEq/(kg·pH); flat beyond the ends. */
  readonly buffering: readonly (readonly [number, number])[];
  readonly lacticFraction: number;
  readonly phDeviation: number;
}

const flat = (value: number): readonly (readonly [number, number])[] => [
  [0, value],
  [1, value],
];

// Common practice, from memory: single values were not readable in any publication found.
const ACIDITY: Readonly<Record<MaltKind, KindAcidity>> = {
  base: {
    ph: [
      [3, 5.75],
      [6, 5.68],
      [8, 5.58],
    ],
    buffering: flat(38),
    lacticFraction: 0,
    phDeviation: 0.08,
  },
  wheat: {
    ph: [
      [4, 5.98],
      [17, 5.65],
    ],
    buffering: flat(38),
    lacticFraction: 0,
    phDeviation: 0.1,
  },
  munich: {
    ph: [
      [9, 5.55],
      [15, 5.5],
      [25, 5.35],
    ],
    buffering: flat(41),
    lacticFraction: 0,
    phDeviation: 0.1,
  },
  kilned: {
    ph: [
      [50, 5.15],
      [75, 4.98],
      [160, 4.75],
    ],
    buffering: flat(46),
    lacticFraction: 0,
    phDeviation: 0.2,
  },
  caramel: {
    ph: [
      [3, 5.3],
      [25, 5.05],
      [50, 4.95],
      [100, 4.8],
      [200, 4.66],
      [400, 4.52],
    ],
    buffering: [
      [25, 45],
      [100, 50],
      [400, 58],
    ],
    lacticFraction: 0,
    phDeviation: 0.2,
  },
  roasted: {
    ph: [
      [500, 4.67],
      [1400, 4.55],
    ],
    buffering: flat(43),
    lacticFraction: 0,
    phDeviation: 0.2,
  },
  // A pale malt that carries lactic acid: alone in distilled water it ends near pH 3.6.
  acidulated: { ph: flat(5.7), buffering: flat(38), lacticFraction: 0.02, phDeviation: 0.1 },
  "raw grain": { ph: flat(6), buffering: flat(28), lacticFraction: 0, phDeviation: 0.2 },
  "malt extract": { ph: flat(5.4), buffering: flat(38), lacticFraction: 0, phDeviation: 0.2 },
  sugar: { ph: flat(7), buffering: flat(0), lacticFraction: 0, phDeviation: 0 },
};

const BUFFERING_DEVIATION = 0.15;

/**
 * Guesses how a malt buffers from its kind and colour, for when the maltster gives no figures.
 *
 * Malts of one kind differ between barleys, seasons and makers, so a measured distilled-water pH is always better.
 *
 * @returns Distilled-water pH at room temperature, buffering in mEq/(kg·pH), lactic acid, and their deviations.
 * @validRange 0 to 4000 EBC; beyond the colours usual for the kind the nearest usual colour counts.
 * @throws {@link OutOfRangeError} when the colour is outside the valid range.
 * @source Common practice, from memory (docs/sources.md#trade-practice)
 * @example
 * maltAcidity({ kind: "base", colour: ebc(3) }); // { distilledWaterPh: 5.75, buffering: 38, … }
 */
export function maltAcidity({ kind, colour }: { readonly kind: MaltKind; readonly colour: Ebc }): MaltAcidity {
  requireInRange("malt colour", colour, ebc.range);
  const acidity = ACIDITY[kind];
  return {
    distilledWaterPh: ph(between(acidity.ph, colour)),
    buffering: milliequivalentsPerKilogramPh(between(acidity.buffering, colour)),
    lacticFraction: fraction(acidity.lacticFraction),
    phDeviation: acidity.phDeviation,
    bufferingDeviation: kind === "sugar" ? 0 : BUFFERING_DEVIATION,
  };
}

function between(rows: KindAcidity["ph"], colour: number): number {
  const first = rows[0]?.[0] ?? 0;
  const last = rows[rows.length - 1]?.[0] ?? first;
  return interpolateLinear({ quantity: "malt colour", unit: "EBC", rows, x: Math.min(last, Math.max(first, colour)) });
}
