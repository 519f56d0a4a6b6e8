import type { QuantityCauses } from "@/lib/calc/compare";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { SayAmount } from "@/lib/model/difference-sentence";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import { fixedDigits } from "../fixed-digits";

/** Gravity points: thousandths of specific gravity. */
const POINTS = 1000;
/** Where nothing differs, a scale is as steep as over this step, in the library's unit. */
const STEP = 0.01;

/** How the parts of one difference are shown to one person. */
export interface DifferenceAmount {
  readonly unit: string;
  /** A part, signed, without its unit. */
  readonly signed: (part: number) => string;
  /** A size with its unit. */
  readonly say: SayAmount;
}

/**
 * Shows parts of a difference in the reader's unit so that they still add up: a bent scale counts with its mean slope
 * between planned and actual.
 */
export function differenceAmount(
  { quantity, planned, actual, difference }: Pick<QuantityCauses, "quantity" | "planned" | "actual" | "difference">,
  preferences: Preferences,
): DifferenceAmount {
  const { dimension } = QUANTITIES[quantity];
  const { unit, digits, fromLibrary } = displayUnit(dimension, preferences);
  const to = Math.abs(difference) < STEP ? planned + STEP : actual;
  const slope = (fromLibrary(to) - fromLibrary(planned)) / (to - planned);
  const isPoints = unit === "SG";
  const shown = (size: number): string => fixedDigits(size * slope * (isPoints ? POINTS : 1), isPoints ? 1 : digits);
  const name = isPoints ? "points" : unit;
  return {
    unit: name,
    signed: (part) => {
      const text = shown(part);
      return /[1-9]/.test(text) && !text.startsWith("−") ? `+${text}` : text;
    },
    say: (size) => `${shown(size)} ${name}`,
  };
}
