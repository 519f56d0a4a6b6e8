import { QUANTITY_IDS, type Ledger } from "../ledger";
import type { LedgerChange } from "./substitution";

/** Ten times what solved amounts are held to; below it a difference is rounding. */
const ROUNDING = 1e-5;

/**
 * Lists the numbers in which two ledgers differ.
 *
 * @returns Each quantity that differs beyond rounding, with both values, in the order of the process.
 */
export function changedQuantities(before: Ledger, after: Ledger): readonly LedgerChange[] {
  return QUANTITY_IDS.map((quantity) => ({
    quantity,
    before: before.quantities[quantity],
    after: after.quantities[quantity],
  })).filter((change) => differs(change.before, change.after));
}

function differs(before: number | null, after: number | null): boolean {
  if (before === null || after === null) return before !== after;
  return Math.abs(after - before) > ROUNDING * Math.max(Math.abs(before), Math.abs(after));
}
