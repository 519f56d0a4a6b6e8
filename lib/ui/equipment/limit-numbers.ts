import type { Limit } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import { fixedDigits } from "../fixed-digits";

const MOST_DIGITS = 4;

/** Value and bound of a limit: "34.2 L, at most 32.0 L". Two that differ are never printed alike. */
export function limitNumbers({ value, bound, side, dimension }: Limit, preferences: Preferences): string {
  const { unit, digits, fromLibrary } = displayUnit(dimension, preferences);
  let shown = digits;
  const text = (of: number): string => fixedDigits(fromLibrary(of), shown);
  while (value !== bound && text(value) === text(bound) && shown < MOST_DIGITS) shown++;
  return `${text(value)} ${unit}, ${side} ${text(bound)} ${unit}`;
}
