import type { Preferences } from "@/lib/model/preferences";
import type { RecipeChange } from "@/lib/model/recipe-change";
import { fixedDigits } from "@/lib/ui/fixed-digits";
import { Quantity } from "@/lib/ui/quantity";

interface ChangedValueProps {
  readonly change: RecipeChange;
  readonly side: "before" | "after" | "difference";
  readonly preferences: Preferences;
}

const DIGITS = 2;

/** What stood there, what stands there, or by how much they differ. These were typed by somebody, not computed. */
export function ChangedValue({ change, side, preferences }: ChangedValueProps) {
  const { before, after, dimension, unit } = change;
  if (side !== "difference") {
    const value = change[side];
    if (typeof value !== "number") return value ?? "none";
    if (dimension === null) return `${Number(fixedDigits(value, DIGITS))} ${unit}`;
    return <Quantity value={value} dimension={dimension} preferences={preferences} />;
  }
  if (typeof after === "string" || typeof before === "string") return "";
  // What came is all of it more, and what went all of it less; a temperature has no such nothing.
  if ((before === null || after === null) && dimension === "temperature") return "";
  const [from, to] = [before ?? 0, after ?? 0];
  if (dimension === null) return `${signed(to - from)} ${unit}`;
  return <Quantity value={to} differenceFrom={from} dimension={dimension} preferences={preferences} />;
}

function signed(difference: number): string {
  const text = fixedDigits(difference, DIGITS);
  return text.startsWith("−") ? text : `+${text}`;
}
