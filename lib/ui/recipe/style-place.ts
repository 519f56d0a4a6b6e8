import { QUANTITIES, type Dimension, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { isStyled, styleSpan } from "@/lib/model/style-spans";
import type { Span, StyleFigures } from "@/lib/model/styles";
import { displayUnit } from "../display-unit";
import { fixedDigits } from "../fixed-digits";

/** Where a number of the beer stands against its style: "inside 1.045–1.060", "0.004 above 1.045–1.060". */
export function stylePlace(a: {
  readonly figures: StyleFigures;
  readonly id: QuantityId;
  readonly value: number;
  readonly preferences: Preferences;
}): string | null {
  if (!isStyled(a.id)) return null;
  return place(a.value, styleSpan(a.figures, a.id), QUANTITIES[a.id].dimension, a.preferences);
}

function place(value: number, { low, high }: Span, dimension: Dimension, preferences: Preferences): string {
  const { fromLibrary, ...shown } = displayUnit(dimension, preferences);
  // No style asks for a tenth of a bitterness unit.
  const digits = dimension === "bitterness" ? 0 : shown.digits;
  const text = (of: number): string => fixedDigits(fromLibrary(of), digits);
  const range = `${text(low)}–${text(high)}`;
  const off = (bound: number): string => fixedDigits(Math.abs(fromLibrary(value) - fromLibrary(bound)), digits);
  // What is only outside by less than is printed counts as inside.
  if (value < low && isSeen(off(low))) return `${off(low)} below ${range}`;
  if (value > high && isSeen(off(high))) return `${off(high)} above ${range}`;
  return `inside ${range}`;
}

const isSeen = (number: string): boolean => /[1-9]/.test(number);
