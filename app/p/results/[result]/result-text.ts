import type { PublishedResult } from "@/lib/model/published-result";
import { figuresInWords } from "../../beer-figure-texts";

/** A result in one line, for the preview of a link. */
export function resultText({ clubName, recipeTitle, brewers, kettles, figures }: PublishedResult): string {
  const beer = figuresInWords(figures);
  const who = `“${recipeTitle}” of ${clubName}, brewed by ${String(brewers)} brewers on ${String(kettles)} kettles`;
  return `${who}, planned against measured${beer === "" ? "" : `: ${beer}`}.`;
}
