import { OutOfRangeError } from "@/lib/calc/errors";
import { PACK_RANGE, type YeastForm } from "@/lib/calc/fermentation";
import type { Recipe } from "@/lib/calc/ledger";
import { billionCells, celsius, days, grams } from "@/lib/calc/units";
import { estimateCells, type CellEstimate } from "@/lib/model/cellar/cell-estimate";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Pitched } from "@/lib/model/log/log-event";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import { fixedDigits } from "../fixed-digits";
import { parseAmount } from "../parse-amount";

/** A pitch while it is typed. */
export interface PitchDraft {
  readonly yeast: string;
  readonly form: YeastForm;
  readonly packs: string;
  readonly perPack: string;
  readonly age: string;
  readonly stored: string;
  readonly starter: "none" | "still" | "stirred";
  readonly starterL: string;
  readonly starterG: string;
  /** What is logged; empty takes the estimate. */
  readonly cells: string;
  readonly celsius: string;
  readonly at: string;
  readonly note: string;
}

export function emptyPitch(yeast: Recipe["yeast"], preferences: Preferences): PitchDraft {
  const inUnit = (value: number): string => fixedDigits(displayUnit("temperature", preferences).fromLibrary(value), 0);
  return {
    yeast: yeast.name,
    ...{ form: "dry", packs: "1", perPack: "", age: "", starter: "none", starterL: "", starterG: "" },
    stored: inUnit(4),
    ...{ cells: "", at: "", note: "" },
    celsius: inUnit(yeast.celsius),
  };
}

type Read = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly message: string };

const COUNT = /^\d{1,4}$/;

function readCount(label: string, text: string, max: number): Read {
  const count = Number(text.trim());
  if (COUNT.test(text.trim()) && count >= 1 && count <= max) return { ok: true, value: count };
  return {
    ok: false,
    message: `${label} “${text.trim().slice(0, 20)}” is not a whole number from 1 to ${String(max)}`,
  };
}

/** The living cells by what was typed; null while too little is typed to tell, or where no rate holds. */
export function estimateOf(draft: PitchDraft, preferences: Preferences): CellEstimate | null {
  const packs = readCount("Packs", draft.packs, 1000);
  const perPack = parseAmount({ text: draft.perPack, label: "Cells", dimension: "cells", preferences });
  const age = readCount("Age", draft.age === "0" ? "1" : draft.age, PACK_RANGE.days.max);
  const stored = parseAmount({ text: draft.stored, label: "Stored at", dimension: "temperature", preferences });
  const starterG = parseAmount({ text: draft.starterG, label: "Extract", dimension: "grams", preferences });
  if (!packs.ok || !perPack.ok || !age.ok || !stored.ok || (draft.starter !== "none" && !starterG.ok)) return null;
  try {
    return estimateCells({
      form: draft.form,
      packs: packs.value,
      cellsPerPack: billionCells(perPack.value),
      ageDays: days(draft.age === "0" ? 0 : age.value),
      storedAt: celsius(stored.value),
      starter:
        draft.starter === "none" || !starterG.ok ? null : { extractG: grams(starterG.value), method: draft.starter },
    });
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

export type ReadPitch =
  | { readonly ok: true; readonly pitch: Pitched; readonly at: Date | null }
  | { readonly ok: false; readonly errors: FieldErrors };

/** Reads a pitch; every message says field, value and range. */
export function readPitch(draft: PitchDraft, preferences: Preferences): ReadPitch {
  const estimate = estimateOf(draft, preferences);
  const typed = parseAmount({ text: draft.cells, label: "Cells pitched", dimension: "cells", preferences });
  const warm = parseAmount({
    ...{ text: draft.celsius, label: "Temperature at pitching", dimension: "temperature" as const, preferences },
    range: { min: -5, max: 60 },
  });
  const starter = parseAmount({
    ...{ text: draft.starterL, label: "Starter", dimension: "volume" as const, preferences },
    range: { min: 0, max: 1000 },
  });
  const hasStarter = draft.starter !== "none";
  const at = draft.at === "" ? null : new Date(draft.at);
  const errors: Record<string, string> = {};
  if (draft.yeast.trim() === "") errors["pitch-yeast"] = "Yeast is empty: write which it was";
  if (draft.cells.trim() !== "" && !typed.ok) errors["pitch-cells"] = typed.message;
  if (!warm.ok) errors["pitch-celsius"] = warm.message;
  if (hasStarter && !starter.ok) errors["pitch-starter-l"] = starter.message;
  if (at !== null && Number.isNaN(at.getTime())) errors["pitch-at"] = "Time of pitching is not a date with a time";
  if (Object.keys(errors).length > 0 || !warm.ok) return { ok: false, errors };
  const estimated = estimate?.ok === true ? estimate.cells.expected : null;
  const cells = draft.cells.trim() !== "" && typed.ok ? typed.value : estimated;
  const starterL = hasStarter && starter.ok ? starter.value : 0;
  const { yeast, note } = draft;
  return { ok: true, at, pitch: { kind: "pitch", yeast: yeast.trim(), cells, starterL, celsius: warm.value, note } };
}
