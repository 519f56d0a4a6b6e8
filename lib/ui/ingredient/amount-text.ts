import { ON_HAND_FIELDS } from "@/lib/model/ingredient-fields";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "../format-quantity";

/** An amount of a lot in words: "2.30 kg", "5.00 lb", "3 pcs". Salts and acids are weighed in grams everywhere. */
export function amountText(amount: number, kind: IngredientKind, preferences: Preferences): string {
  const { dimension, make } = ON_HAND_FIELDS[kind];
  if (dimension === null) return `${String(amount).replace("-", "−")}\u00a0${make.range.unit}`;
  const { text, unit } = formatQuantity({ value: amount, dimension, preferences });
  return `${text}\u00a0${unit}`;
}

/** What a field for such an amount takes beside a number; packs, salts and acids have one unit everywhere. */
export function amountHint(kind: IngredientKind): string | undefined {
  return ON_HAND_FIELDS[kind].dimension === null
    ? undefined
    : "Another unit may be written out, such as 2.3 kg or 5 lb.";
}

/** The same with its sign, for what came and went. */
export function changeText(change: number, kind: IngredientKind, preferences: Preferences): string {
  const text = amountText(change, kind, preferences);
  return change > 0 ? `+${text}` : text;
}
