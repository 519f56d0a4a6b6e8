import { explain, type ExplainedNumber } from "@/lib/calc/explain";
import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatDifference } from "@/lib/ui/format-difference";
import { intervalInWords, type ComparedLedgersOf } from "./difference-groups";

/** The number of one cell, explained. */
export function explainCell(
  compared: ComparedLedgersOf,
  id: QuantityId,
  column: string,
  preferences: Preferences,
): ExplainedNumber {
  if (column === "before") return explain({ ...compared.one, id });
  if (column === "after") return explain({ ...compared.other, id });
  return explainDifference(compared, id, preferences);
}

function explainDifference(compared: ComparedLedgersOf, id: QuantityId, preferences: Preferences): ExplainedNumber {
  const { label, dimension } = QUANTITIES[id];
  const [from, to] = [compared.one.ledger.quantities[id], compared.other.ledger.quantities[id]];
  const interval = compared.apart[id];
  const inWords = interval === undefined || from === null ? "" : intervalInWords({ id, from, interval, preferences });
  const { text, unit } = formatDifference({ value: to ?? 0, from: from ?? 0, dimension, preferences });
  return {
    label: `${label}, difference`,
    value: to,
    dimension,
    words: `After less before: ${text} ${unit}${inWords === "" ? "" : `; ${inWords}`}. Both texts are brewed on paper with the same malt and hops of one delivery, so what those are off by is off in both and drops out as far as its effect is the same; where the kettle is one and the same, so do its figures. That is why the difference can be surer than either number.`,
    equation: "difference = after − before; u² = Σ shared (effect after − effect before)² + Σ separate effect²",
    inputs: [
      { label: `${label}, after`, value: to, dimension, unit: "", quantity: id },
      { label: `${label}, before`, value: from, dimension, unit: "" },
    ],
    sources: [{ anchor: "jcgm-100-2008", title: "JCGM 100:2008: law of propagation of uncertainty" }],
    validRange: "Effects that are near straight lines within one standard uncertainty.",
    whatIf: [],
  };
}
