import type { QuantityId } from "./quantity-catalogue";

/** An 80 % interval around a predicted value. */
export interface Interval {
  readonly low80: number;
  readonly high80: number;
}

export type Intervals = Readonly<Partial<Record<QuantityId, Interval>>>;
