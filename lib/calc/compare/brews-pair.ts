import { requireInRange } from "../errors";
import { normalCdf, Z80 } from "../statistics";
import { BREWS_RANGE } from "./brews";

/** One number of a brew that two are compared by. */
export interface PairedResult {
  readonly quantity: string;
  readonly planned: number;
  readonly measured: number;
  readonly sd: number;
}

export interface PairedRow {
  readonly quantity: string;
  readonly first: number;
  readonly second: number;
  /** First less second, as it was measured and as it was planned. */
  readonly measuredDifference: number;
  readonly plannedDifference: number;
  /** What the plans do not explain of the difference, with its uncertainty and 80 % interval. */
  readonly beyondPlan: number;
  readonly sd: number;
  readonly low80: number;
  readonly high80: number;
  /** Probability of so much by the readings' uncertainty alone. */
  readonly p: number;
  /** The same, with regard to how many numbers are looked at. */
  readonly adjustedP: number;
  readonly isBeyondChance: boolean;
}

/** Share of pairs of like brews in which anything at all may be called beyond chance. */
export const PAIR_LEVEL = 0.05;

/**
 * Compares two brews number by number: how they differ beyond what their plans differ, and what is more than chance.
 *
 * Of a dozen numbers one is often far out by chance alone, so each probability is raised by Holm's rule, which holds
 * whether or not the numbers depend on each other.
 *
 * @param a.first - Numbers of one brew, measured, each once.
 * @param a.second - Of the other; those that only one has are left out.
 * @returns Rows in the order of the first brew.
 * @validRange Values up to 1e9 in size, uncertainties from 1e-9; the readings' errors taken as normal.
 * @throws {@link OutOfRangeError} when a value or an uncertainty is not a number or outside its range.
 * @source Holm 1979 (docs/sources.md#holm-1979)
 * @example
 * const row = { quantity: "fermenter.originalExtract", planned: 12, sd: 0.25 };
 * compareTwoBrews({ first: [{ ...row, measured: 12.4 }], second: [{ ...row, measured: 11.2 }] }); // [{ beyondPlan: 1.2, p: 0.0007, … }]
 */
export function compareTwoBrews({
  first,
  second,
}: {
  readonly first: readonly PairedResult[];
  readonly second: readonly PairedResult[];
}): readonly PairedRow[] {
  for (const { planned, measured, sd } of [...first, ...second]) {
    requireInRange("planned value", planned, BREWS_RANGE.value);
    requireInRange("measured value", measured, BREWS_RANGE.value);
    requireInRange("standard uncertainty", sd, BREWS_RANGE.sd);
  }
  const others = new Map(second.map((row) => [row.quantity, row]));
  const rows = first.flatMap((row) => {
    const other = others.get(row.quantity);
    return other === undefined ? [] : [paired(row, other)];
  });
  const adjusted = byHolm(rows.map(({ p }) => p));
  return rows.map((row, i) => {
    const adjustedP = adjusted[i] ?? 1;
    return { ...row, adjustedP, isBeyondChance: adjustedP < PAIR_LEVEL };
  });
}

function paired(a: PairedResult, b: PairedResult): Omit<PairedRow, "adjustedP" | "isBeyondChance"> {
  const measuredDifference = a.measured - b.measured;
  const plannedDifference = a.planned - b.planned;
  const beyondPlan = measuredDifference - plannedDifference;
  const sd = Math.hypot(a.sd, b.sd);
  return {
    quantity: a.quantity,
    ...{ first: a.measured, second: b.measured, measuredDifference, plannedDifference, beyondPlan, sd },
    low80: beyondPlan - Z80 * sd,
    high80: beyondPlan + Z80 * sd,
    p: 2 * normalCdf(Math.max(-37, -Math.abs(beyondPlan) / sd)),
  };
}

/** The smallest counts as many times as there are, the next one time less, and none less than the one before. */
function byHolm(probabilities: readonly number[]): readonly number[] {
  const order = probabilities.map((p, place) => ({ p, place })).sort((x, y) => x.p - y.p);
  const adjusted = probabilities.map(() => 1);
  let before = 0;
  order.forEach(({ p, place }, i) => {
    before = Math.max(before, Math.min(1, (order.length - i) * p));
    adjusted[place] = before;
  });
  return adjusted;
}
