import { OutOfRangeError, type Range } from "../../errors";
import type { QuantityMaker } from "../../units";

export type Maker = QuantityMaker<string>;

/** A conversion; `never` stands for whatever unit it takes, which only the pair of units beside it knows. */
export type Convert = (value: never) => number;

/** Share by which a computed bound is drawn in, so that rounding does not put it outside. */
const HAIR = 1e-9;

/**
 * Finds what a conversion accepts: its own unit as far as the result lies in the range of the other. All are straight lines.
 *
 * @param example - A value that it accepts, not zero.
 * @returns The span, in the unit that the conversion takes.
 */
export function acceptedSpan(call: Convert, example: number, from: Maker, to: Maker): Range {
  const at = (value: number): number => call(value as never);
  const perUnit = (at(1.5 * example) - at(example)) / (0.5 * example);
  const bound = (own: number, image: number): number =>
    isAccepted(call, own) ? own : example + ((1 - HAIR) * (image - at(example))) / perUnit;
  return { unit: from.range.unit, min: bound(from.range.min, to.range.min), max: bound(from.range.max, to.range.max) };
}

function isAccepted(call: Convert, value: number): boolean {
  try {
    call(value as never);
    return true;
  } catch (error) {
    if (error instanceof OutOfRangeError) return false;
    throw error;
  }
}
