import { balanceTest, type BalanceTest } from "./balance-test";
import { extractAccount, type ExtractAccount } from "./extract-account";
import { FOLLOWED_READINGS } from "./followed-readings";
import { nextReading, type NextReading } from "./next-reading";
import { reconciledQuantities, type ReconciledQuantity } from "./reconciled-quantities";
import { settleReadings, type ComparisonInput, type SettledReadings } from "./settle-readings";
import type { Suspect } from "./suspect";

/** One brew with its readings made to agree. */
export interface ReconciledLedger {
  readonly reconciled: readonly ReconciledQuantity[];
  readonly balance: BalanceTest;
  readonly suspects: readonly Suspect[];
  readonly extract: ExtractAccount;
  /** The one reading more that would decide most; null where none would tell much. */
  readonly next: NextReading | null;
}

/**
 * Makes the readings of a brew agree with the balances of water and extract, and says where the extract went.
 *
 * Each reading is weighted by its stated uncertainty, and each figure of the plan by its interval; together they are
 * moved as little as lets every balance close. A reading that cannot be right is named and left out.
 *
 * @param a.ledger - The ledger that was planned for this kettle.
 * @param a.intervals - 80 % intervals of its predictions.
 * @param a.readings - Readings in the ledger's units, each with its standard uncertainty, in order of time.
 * @param a.available - Readings that can still be taken; left out, all of them.
 * @returns Reconciled values with uncertainty and test, the global test, suspects, the account of the extract, kg, which
 * adds up to rounding, and the one reading more that would decide most.
 * @validRange Gravities from 0 to 35 °P, of beer from −9 °P.
 * @throws {@link OutOfRangeError} when a reading or its uncertainty is outside its range.
 * @source Narasimhan and Jordache 2000 (docs/sources.md#narasimhan-jordache-2000); mass balances
 * (docs/sources.md#mass-balance)
 * @example
 * const reading = { quantity: "kettle.preBoilGravity", value: 10.4, sd: 0.25 } as const;
 * reconcile({ ledger, intervals, readings: [reading] }).balance.df; // 1
 */
export function reconcile(a: ComparisonInput & { readonly available?: readonly string[] }): ReconciledLedger {
  return reconciledLedger(settleReadings(a), a.available ?? FOLLOWED_READINGS);
}

/**
 * Does the same with readings that are settled already.
 *
 * @returns As `reconcile`.
 */
export function reconciledLedger(
  settled: SettledReadings,
  available: readonly string[] = FOLLOWED_READINGS,
): ReconciledLedger {
  const reconciled = reconciledQuantities(settled);
  return {
    reconciled,
    balance: balanceTest(settled),
    suspects: settled.found.suspects.map((each) => withBestValue(each, reconciled)),
    extract: extractAccount(settled.settled, settled.unread),
    next: nextReading(settled, available),
  };
}

/** What no balance doubted still has its best value from the other readings, where these reach. */
function withBestValue(suspect: Suspect, reconciled: readonly ReconciledQuantity[]): Suspect {
  const best =
    suspect.test === "balance" ? undefined : reconciled.find(({ quantity }) => quantity === suspect.quantity);
  return best === undefined ? suspect : { ...suspect, shouldBe: best.reconciled, shouldBeSd: best.reconciledSd };
}
