import type { EditorState } from "./editor-state";

/** What the ledger gives back for each row: its share of the extract, or its bitterness. */
export function rowResults(shown: EditorState["shown"]): ReadonlyMap<string, number> {
  const results = new Map<string, number>();
  if (shown === null) return results;
  const { ledger } = shown.brewed;
  shown.keys.fermentables.forEach((key, i) => results.set(key, ledger.fermentables[i]?.share ?? 0));
  shown.keys.hops.forEach((key, i) => results.set(key, ledger.hops[i]?.ibu ?? 0));
  return results;
}
