import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatDifference } from "@/lib/ui/format-difference";
import { beerFigures } from "@/lib/ui/recipe/beer-figures";
import type { ComparedLedgersOf } from "./difference-groups";

/** What became of the beer, in one sentence that says nothing but the figures. */
export function differenceSummary(compared: ComparedLedgersOf, after: string, preferences: Preferences): string {
  const told = beerFigures(preferences).map(({ id, label }) => ({ label, ...apartBy(compared, id, preferences) }));
  const changed = told.filter(({ text }) => text !== null);
  if (changed.length === 0)
    return `${after} is the same beer: ${told.map(({ label }) => inSentence(label)).join(", ")} do not change.`;
  const differences = changed.map(
    ({ label, text, isSure }) => `${inSentence(label)} ${text}${isSure ? "" : " (may be none)"}`,
  );
  const same = told.filter(({ text }) => text === null).map(({ label }) => inSentence(label));
  return `${after} differs in ${differences.join(", ")}${same.length === 0 ? "" : `; ${same.join(" and ")} do not change`}.`;
}

function apartBy(
  { one, other, apart }: ComparedLedgersOf,
  id: QuantityId,
  preferences: Preferences,
): { readonly text: string | null; readonly isSure: boolean } {
  const [from, to] = [one.ledger.quantities[id], other.ledger.quantities[id]];
  if (from === null || to === null) return { text: null, isSure: false };
  const { text, unit } = formatDifference({ value: to, from, dimension: QUANTITIES[id].dimension, preferences });
  const interval = apart[id];
  const isSure = interval === undefined || interval.low80 > 0 || interval.high80 < 0;
  return { text: /[1-9]/.test(text) ? `${text} ${unit}` : null, isSure };
}

const inSentence = (label: string): string => label.charAt(0).toLowerCase() + label.slice(1);
