import type { WordName } from "./draft";

/** The words and choices of a draft as the screen calls them. */
export const WORD_LABELS: Readonly<Record<WordName, string>> = {
  title: "Title",
  style: "Style",
  notes: "Notes",
  mashes: "Mashes",
  stand: "Hop stand",
  "yeast.name": "Yeast",
  "packaging.container": "Container",
  "packaging.priming": "Priming",
  "water.acid": "Acid",
};
