import type { ExtractLine } from "@/lib/calc/compare";

/** How a line enters the sum, as the account writes it. */
export const EXTRACT_SIGNS: Readonly<Record<ExtractLine["effect"], string>> = { holds: "=", gains: "+", loses: "−" };

/** The same, read aloud. */
export const EXTRACT_WORDS: Readonly<Record<ExtractLine["effect"], string>> = {
  holds: "there is",
  gains: "plus",
  loses: "less",
};
