import type { ComparedAs } from "@/lib/calc/compare";
import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { digitsForInterval } from "../digits-for-interval";
import { displayUnit } from "../display-unit";
import { fixedDigits } from "../fixed-digits";
import type { FormattedQuantity } from "../format-quantity";

/** How a compared number is shown to one person: as it was measured, or as how far it is from the plan. */
export interface ComparedScale {
  readonly as: ComparedAs;
  readonly unit: string;
  readonly spoken: string;
  readonly digits: number;
  /** In the person's unit; `base` is the planned value that a difference is from, for scales that are bent. */
  readonly shown: (value: number, base: number) => number;
}

interface Ends {
  readonly low80: number;
  readonly high80: number;
}

export function comparedScale(as: ComparedAs, dimension: Dimension, preferences: Preferences): ComparedScale {
  const { unit, spoken, digits, fromLibrary } = displayUnit(dimension, preferences);
  const shown =
    as === "measured"
      ? (value: number) => fromLibrary(value)
      : (value: number, base: number) => fromLibrary(base + value) - fromLibrary(base);
  return { as, unit, spoken, digits, shown };
}

/** A compared value with its interval, as text for the eye and for the ear. */
export function comparedText(
  scale: ComparedScale,
  a: { readonly value: number; readonly base: number; readonly interval?: Ends | null },
): FormattedQuantity {
  const at = (value: number): number => scale.shown(value, a.base);
  const interval = a.interval ?? null;
  const half = interval === null ? null : Math.abs(at(interval.high80) - at(interval.low80)) / 2;
  const digits = half === null ? scale.digits : digitsForInterval(half, scale.digits);
  const text = (value: number): string => signed(scale, fixedDigits(at(value), digits));
  const ends = interval === null ? null : `${text(interval.low80)} to ${text(interval.high80)}`;
  return {
    text: text(a.value),
    unit: scale.unit,
    spoken: `${text(a.value)} ${scale.spoken}${ends === null ? "" : `, between ${ends.replace(" to ", " and ")}`}`,
    interval: ends === null ? null : `(${ends})`,
  };
}

/** A spread, which has no sign and no zero of its own. */
export function spreadText(
  { as, unit, spoken, digits, shown }: ComparedScale,
  sd: number,
  base: number,
): FormattedQuantity {
  const from = as === "measured" ? base : 0;
  const size = Math.abs(shown(from + sd, base) - shown(from, base));
  // One digit more than a value has: a spread is smaller than what it is of.
  const text = fixedDigits(size, digits + 1);
  return { text, unit, spoken: `${text} ${spoken}`, interval: null };
}

function signed({ as }: ComparedScale, text: string): string {
  return as === "measured" || text.startsWith("−") || !/[1-9]/.test(text) ? text : `+${text}`;
}
