import { comparedRows, meteredRows, type ComparedRow } from "./compared-rows";
import { reconciledLedger, type ReconciledLedger } from "./reconcile";
import { settleReadings, type ComparisonInput } from "./settle-readings";

/** Planned and measured side by side, with everything that reconciliation says of them. */
export interface LedgerComparison extends ReconciledLedger {
  readonly rows: readonly ComparedRow[];
}

/**
 * Compares what was planned with what was measured, station by station, and finds the reading that cannot be right.
 *
 * Of several readings of one quantity the last one given counts. Hot volumes are read at the boiling point, the others
 * count at 20 °C. Efficiencies, losses, attenuation and alcohol follow from the readings where these reach.
 *
 * @param a.ledger - The ledger that was planned for this kettle.
 * @param a.intervals - 80 % intervals of its predictions.
 * @param a.readings - Readings in the ledger's units, each with its standard uncertainty, in order of time.
 * @param a.meter - Readings of the electricity meter, in order of time; with them the energy of the day is a row as well.
 * @returns Rows in the order of the process, and all that `reconcile` says.
 * @validRange Gravities from 0 to 35 °P, of beer from −9 °P.
 * @throws {@link OutOfRangeError} when a reading or its uncertainty is outside its range.
 * @source Mass balances (docs/sources.md#mass-balance); reconciliation by Narasimhan and Jordache 2000
 * (docs/sources.md#narasimhan-jordache-2000)
 * @example
 * const reading = { quantity: "kettle.preBoil", value: 26.5, sd: 0.3 } as const;
 * compareLedger({ ledger, intervals, readings: [reading] }).rows; // […, { quantity: "kettle.preBoil", difference: −0.36, … }]
 */
export function compareLedger(a: ComparisonInput): LedgerComparison {
  const settled = settleReadings(a);
  const ledger = reconciledLedger(settled);
  return { ...ledger, rows: [...comparedRows(settled, ledger.reconciled), ...meteredRows(a)] };
}
