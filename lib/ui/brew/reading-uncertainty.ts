import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import type { ParsedAmount } from "../parse-amount";

const PLAIN = /^\s*(?:±\s*)?(\d+[.,]?\d*|[.,]\d+)\s*$/;
const SIGNIFICANT_DIGITS = 2;

/**
 * The slope of the reader's scale at a value: an uncertainty is a small difference, and scales with another zero or a
 * bend (°F, gravity) do not convert differences as they convert values.
 */
function unitsPerLibraryUnit(dimension: Dimension, preferences: Preferences, at: number): number {
  const { fromLibrary } = displayUnit(dimension, preferences);
  return fromLibrary(at + 0.5) - fromLibrary(at - 0.5);
}

/** A standard uncertainty as text in the reader's unit, for a field. `at` is the value that it belongs to. */
export function uncertaintyText(sd: number, dimension: Dimension, preferences: Preferences, at: number): string {
  const shown = sd * unitsPerLibraryUnit(dimension, preferences, Math.max(1, at));
  return String(Number(shown.toPrecision(SIGNIFICANT_DIGITS)));
}

/** Reads it back into the library's unit. */
export function parseUncertainty(a: {
  readonly text: string;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
  readonly at: number;
}): ParsedAmount {
  const { unit } = displayUnit(a.dimension, a.preferences);
  const number = PLAIN.exec(a.text)?.[1]?.replace(",", ".");
  if (number === undefined) {
    const shown = a.text.trim() === "" ? "is empty" : `“${a.text.trim().slice(0, 20)}” is not a number`;
    return { ok: false, message: `Uncertainty ${shown}; write one standard uncertainty in ${unit}, 0 or more` };
  }
  return { ok: true, value: Number(number) / unitsPerLibraryUnit(a.dimension, a.preferences, Math.max(1, a.at)) };
}
