import { OutOfRangeError, requireInRange } from "../errors";
import {
  fraction,
  kilograms,
  milliequivalentsPerKilogramPh,
  ph,
  type Fraction,
  type Kilograms,
  type MilliequivalentsPerKilogramPh,
  type Ph,
} from "../units";

/** Curvature of a malt's titration, where the maltster gives one. */
export interface TitrationCurve {
  /** mEq/(kg·pH²). */
  readonly quadratic: number;
  /** mEq/(kg·pH³). */
  readonly cubic: number;
  /** Lowest and highest pH that was titrated; beyond them the curve goes on as its tangent. */
  readonly fromPh: Ph;
  readonly toPh: Ph;
}

/** One row of the grist as the balance of protons sees it. */
export interface MashedMalt {
  readonly kg: Kilograms;
  /** pH of a mash of this malt alone in distilled water, at room temperature; of acidulated malt, without its lactic acid. */
  readonly distilledWaterPh: Ph;
  readonly buffering: MilliequivalentsPerKilogramPh;
  /** Lactic acid by mass of the malt; 0 for all but acidulated malt. */
  readonly lacticFraction: Fraction;
  readonly titration?: TitrationCurve;
}

export const DISTILLED_WATER_PH_RANGE = { unit: "pH", min: 3, max: 8 } as const;
export const CURVATURE_RANGE = { unit: "mEq/(kg·pH²)", min: -500, max: 500 } as const;
const RISING = { unit: "mEq/(kg·pH)", min: 0, max: 10000 } as const;

/** A checked malt: base taken up is `a x + b x² + c x³` between the ends, x counted from its own pH, and straight beyond. */
export interface Buffer {
  readonly kg: number;
  readonly distilledWaterPh: number;
  readonly linear: number;
  readonly quadratic: number;
  readonly cubic: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Checks a malt and makes its titration ready to be evaluated.
 *
 * @returns The curve of one kilogram, and the mass.
 * @throws {@link OutOfRangeError} when a figure is outside its range, or the curve falls anywhere in its span.
 * @example
 * bufferOf({ kg, distilledWaterPh: ph(5.75), buffering: buffering(38), lacticFraction: fraction(0) }).linear; // 38
 */
export function bufferOf({ kg, distilledWaterPh, buffering, lacticFraction, titration }: MashedMalt): Buffer {
  requireInRange("malt", kg, kilograms.range);
  requireInRange("distilled-water pH", distilledWaterPh, DISTILLED_WATER_PH_RANGE);
  requireInRange("buffering", buffering, milliequivalentsPerKilogramPh.range);
  requireInRange("lactic acid in the malt", lacticFraction, fraction.range);
  const straight = { kg, distilledWaterPh, linear: buffering, quadratic: 0, cubic: 0, low: 0, high: 0 };
  if (titration === undefined) return straight;
  const { quadratic, cubic, fromPh, toPh } = titration;
  requireInRange("quadratic term", quadratic, CURVATURE_RANGE);
  requireInRange("cubic term", cubic, { ...CURVATURE_RANGE, unit: "mEq/(kg·pH³)" });
  requireInRange("first pH of the titration", fromPh, { ...ph.range, max: distilledWaterPh });
  requireInRange("last pH of the titration", toPh, { ...ph.range, min: distilledWaterPh });
  const curve = { ...straight, quadratic, cubic, low: fromPh - distilledWaterPh, high: toPh - distilledWaterPh };
  // A parabola is lowest at an end or where it turns.
  const turn = cubic === 0 ? 0 : Math.min(curve.high, Math.max(curve.low, -quadratic / (3 * cubic)));
  const slope = Math.min(slopeAt(curve, curve.low), slopeAt(curve, curve.high), slopeAt(curve, turn));
  if (slope < 0) throw new OutOfRangeError("slope of the titration", slope, RISING);
  return curve;
}

function slopeAt({ linear, quadratic, cubic }: Buffer, x: number): number {
  return linear + x * (2 * quadratic + x * 3 * cubic);
}

/**
 * Gives the base that takes a malt from its own pH to another.
 *
 * @param buffer - The malt.
 * @param to - pH.
 * @returns Base, mEq; below zero for acid.
 * @example
 * baseTaken(palemalt, 5.4); // −13.3 for a kilogram of 38 mEq/(kg·pH) at 5.75
 */
export function baseTaken(buffer: Buffer, to: number): number {
  const { kg, linear, quadratic, cubic } = buffer;
  const x = to - buffer.distilledWaterPh;
  const inside = Math.min(buffer.high, Math.max(buffer.low, x));
  const curved = inside * (linear + inside * (quadratic + inside * cubic));
  return kg * (curved + (x - inside) * slopeAt(buffer, inside));
}
