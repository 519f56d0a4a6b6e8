import type { RecipeContent } from "../recipe-content";
import { isPlainRecord } from "./file-node";
import { lostOf, type LeftoverEntry, type Step } from "./leftover";
import { writtenIn, type ExchangeFormat } from "./read-recipes";

/** What becomes of the fields of a file for which a recipe has no place, when it is exported. */
export interface ExportReport {
  readonly format: ExchangeFormat;
  /** How many are written back. */
  readonly back: number;
  /** Those that no longer fit, because the recipe has changed there since. */
  readonly lost: readonly { readonly place: string; readonly said: string }[];
}

const LONGEST_SAID = 80;

export function exportReport(
  titled: { readonly title: string; readonly content: RecipeContent },
  kept: { readonly format: ExchangeFormat; readonly entries: readonly LeftoverEntry[] },
): ExportReport {
  const lost = lostOf(writtenIn(kept.format, titled), kept.entries);
  return {
    format: kept.format,
    back: kept.entries.length - lost.length,
    lost: lost.map(({ path, is }) => ({ place: path.map(placeOf).join(" › "), said: cut(saidOf(is)) })),
  };
}

/** A row by its name, the second of two of one name by its number. */
function placeOf(step: Step): string {
  if (typeof step === "string") return step;
  const name = step.name === "" ? "a row without a name" : step.name;
  return step.nth === 0 ? name : `${name}, number ${String(step.nth + 1)}`;
}

function saidOf(is: LeftoverEntry["is"]): string {
  if (typeof is === "string") return is;
  const { unit, value } = isPlainRecord(is) ? is : {};
  return typeof unit === "string" && typeof value === "number" ? `${String(value)} ${unit}` : JSON.stringify(is);
}

function cut(text: string): string {
  const line = text.replaceAll(/\s+/g, " ").trim();
  return line.length <= LONGEST_SAID ? line : `${line.slice(0, LONGEST_SAID - 1)}…`;
}
