import type { TrialEntry } from "@/lib/model/trial/trial-entry";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "@/lib/ui/format-quantity";
import type { Dimension } from "@/lib/calc/ledger";

/** An entry in words, as a line of the list has it. */
export function readingText(entry: TrialEntry, unit: "mm" | "mark", preferences: Preferences): string {
  const shown = (value: number, dimension: Dimension): string => {
    const digits = dimension === "volume" ? 2 : undefined;
    const { text, unit: of } = formatQuantity({ value, dimension, preferences, digits });
    return `${text} ${of}`;
  };
  switch (entry.kind) {
    case "temperature":
      return shown(entry.value, "temperature");
    case "volume":
      return `${shown(entry.value, "volume")} at ${shown(entry.payload.celsius, "temperature")}`;
    case "mark":
      return `${shown(entry.payload.litres, "volume")} more, up to ${unit === "mm" ? `${String(entry.value)} mm` : `mark ${String(entry.value)}`}`;
    case "through":
      return `${shown(entry.payload.hotC, "temperature")} in, ${shown(entry.value, "temperature")} out, ${shown(entry.payload.litres, "volume")} in ${shown(entry.payload.minutes, "minutes")}`;
    default:
      return "";
  }
}
