import { Z80 } from "../statistics";
import type { ExpectedTime } from "./replan";
import type { Pace } from "./pace";

/** A moment of the day with what its uncertainty is made of. */
export interface Moment {
  readonly min: number;
  /** From what goes on by itself, min². */
  readonly variance: number;
  /** Minutes of heating on the way, as on the sheet: all of it is off in one direction. */
  readonly heatingMin: number;
  /** Minutes of chilling on the way, as on the sheet. */
  readonly coolingMin: number;
}

/**
 * Makes a moment that is exactly known.
 *
 * @returns The moment.
 */
export const certain = (min: number): Moment => ({ min, variance: 0, heatingMin: 0, coolingMin: 0 });

/**
 * Adds a stretch to a moment.
 *
 * @returns The later moment.
 */
export function after(from: Moment, by: Partial<Moment> & { readonly min: number }): Moment {
  return {
    min: from.min + by.min,
    variance: from.variance + (by.variance ?? 0),
    heatingMin: from.heatingMin + (by.heatingMin ?? 0),
    coolingMin: from.coolingMin + (by.coolingMin ?? 0),
  };
}

/**
 * Gives a moment its 80 % interval; nothing that is to come comes before now.
 *
 * @returns The expected time.
 * @source JCGM 100:2008, law of propagation of uncertainty (docs/sources.md#jcgm-100-2008)
 */
export function expectedTime(of: Moment, heating: Pace, cooling: Pace, nowMin: number): ExpectedTime {
  const variance = of.variance + (of.heatingMin * heating.sd) ** 2 + (of.coolingMin * cooling.sd) ** 2;
  const half = Z80 * Math.sqrt(variance);
  const low = of.min - half;
  return { min: of.min, low80: of.min >= nowMin ? Math.max(nowMin, low) : low, high80: of.min + half };
}
