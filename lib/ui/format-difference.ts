import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "./display-unit";
import { fixedDigits } from "./fixed-digits";
import type { FormattedQuantity } from "./format-quantity";

/**
 * Formats how far a value is from another, with its sign. Both are shown in the reader's unit first and then
 * subtracted, because scales with another zero or a bend (°F, gravity) do not convert a difference.
 */
export function formatDifference(a: {
  readonly value: number;
  readonly from: number;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
}): FormattedQuantity {
  const display = displayUnit(a.dimension, a.preferences);
  const text = fixedDigits(display.fromLibrary(a.value) - display.fromLibrary(a.from), display.digits);
  const isZero = !/[1-9]/.test(text);
  const signed = isZero || text.startsWith("−") ? text : `+${text}`;
  return { text: signed, unit: display.unit, spoken: spokenDifference(text, isZero, display.spoken), interval: null };
}

function spokenDifference(text: string, isZero: boolean, unit: string): string {
  if (isZero) return "no difference";
  return text.startsWith("−") ? `${text.slice(1)} ${unit} less` : `${text} ${unit} more`;
}
