import type { Dimension } from "@/lib/calc/ledger";
import type { QuantityMaker } from "@/lib/calc/units";

interface Bounds {
  readonly min: number;
  readonly max: number;
}

/** A number that somebody types: its name, what kind of number it is, and the range that makes sense. */
export interface MeasuredField<U extends string = string> extends Bounds {
  readonly label: string;
  /** null where everybody reads and types the library's own unit. */
  readonly dimension: Dimension | null;
  readonly make: QuantityMaker<U>;
}

/** Defines a field; one with a narrower range than its unit passes its own. */
export function measuredField<U extends string>(
  label: string,
  dimension: Dimension | null,
  make: QuantityMaker<U>,
  { min, max }: Bounds = make.range,
): MeasuredField<U> {
  return { label, dimension, make, min, max };
}
