"use client";

import type { ReactElement } from "react";
import { limitWords } from "@/lib/calc/explain";
import type { Preferences } from "@/lib/model/preferences";
import { limitNumbers } from "../equipment/limit-numbers";
import type { KettleFigures } from "./kettle-figures";
import { wayInShort } from "./way-words";

/** Whether the recipe fits a kettle, by which way out, or why not; pressed, it shows the limits and the ways out. */
export interface FitCellProps {
  readonly id: string;
  readonly figures: KettleFigures | null;
  readonly preferences: Preferences;
  readonly onOpen: ((id: string) => void) | undefined;
}

export function FitCell({ id, figures, preferences, onOpen }: FitCellProps): ReactElement {
  if (figures === null) return <span className="text-muted">…</span>;
  const words = fitWords(figures, preferences);
  const isBad = figures.fit === "not";
  const text = <span className={isBad ? "text-accent" : undefined}>{words}</span>;
  if (onOpen === undefined) return text;
  return (
    <button
      type="button"
      className="kettle-fit-button"
      aria-haspopup="dialog"
      onClick={() => {
        onOpen(id);
      }}
    >
      {text}
    </button>
  );
}

/** "Fits", "Fits with a top-up of 4.0 L after the boil", or the first limit that it breaks. */
export function fitWords({ fit, way, reasons, isWayLost }: KettleFigures, preferences: Preferences): string {
  if (fit === "fits") return "Fits";
  if (way !== null) return `Fits with ${wayInShort(way, preferences)}`;
  const lost = isWayLost ? "The way out that was chosen no longer works. " : "";
  const [first, ...others] = reasons;
  if (first === undefined) return `${lost}Does not fit: no grist reaches this strength here`;
  const more = others.length === 0 ? "" : `, and ${String(others.length)} more`;
  return `${lost}Does not fit. ${limitWords(first).title}: ${limitNumbers(first, preferences)}${more}`;
}
