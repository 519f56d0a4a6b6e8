import type { Ledger } from "@/lib/calc/ledger";
import type { RowKeys } from "./read-rows";

/** What the ledger gives back for each row: its share of the extract, or its bitterness. */
export function rowResults(ledger: Ledger, keys: RowKeys): ReadonlyMap<string, number> {
  const results = new Map<string, number>();
  keys.fermentables.forEach((key, i) => results.set(key, ledger.fermentables[i]?.share ?? 0));
  keys.hops.forEach((key, i) => results.set(key, ledger.hops[i]?.ibu ?? 0));
  return results;
}
