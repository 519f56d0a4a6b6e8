import type { PublishedRecipe } from "@/lib/model/publication";
import { figuresInWords } from "../beer-figure-texts";
import { publishedQuantities } from "./published-quantities";

/** The beer in one line, for the preview of a link: its figures as the page computes them. */
export function previewText({ content, authorName }: PublishedRecipe): string {
  const quantities = publishedQuantities(content);
  return quantities === null
    ? `A recipe by ${authorName}.`
    : `A recipe by ${authorName}: ${figuresInWords(quantities)}.`;
}
