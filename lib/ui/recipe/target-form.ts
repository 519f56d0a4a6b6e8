import type { Dimension } from "@/lib/calc/ledger";
import { ACID_SOLUTIONS, IONS, type Ion } from "@/lib/calc/water";
import type { Preferences } from "@/lib/model/preferences";
import { ION_FIELDS } from "@/lib/model/recipe-fields";
import { parseAmount } from "../parse-amount";
import { readField } from "../read-field";
import type { AcidName } from "./acid-names";
import type { RowKeys } from "./read-rows";
import type { Target } from "./solve-target";

/** A target as it is being typed. */
export interface TargetForm {
  readonly kind: Target["kind"];
  /** List and key of the row that carries it; empty for none. */
  readonly row: string;
  readonly acid: AcidName;
  readonly wanted: string;
  readonly ions: Readonly<Partial<Record<Ion, string>>>;
}

interface TargetKind {
  readonly label: string;
  readonly dimension: Dimension;
}

export const TARGET_KINDS: Readonly<Record<Target["kind"], TargetKind>> = {
  gravity: { label: "Original gravity", dimension: "extract" },
  bitterness: { label: "Bitterness of one hop", dimension: "bitterness" },
  colour: { label: "Colour of the beer", dimension: "colour" },
  "mash pH": { label: "Mash pH", dimension: "ph" },
  ions: { label: "Ions of the water", dimension: "concentration" },
};

export const NO_TARGET: TargetForm = { kind: "gravity", row: "", acid: "lactic80", wanted: "", ions: {} };

/** The target that a form asks for, and how it is called; or what is wrong with it. */
export function readTarget(
  form: TargetForm,
  keys: RowKeys,
  preferences: Preferences,
):
  | { readonly ok: true; readonly target: Target; readonly words: string }
  | { readonly ok: false; readonly message: string } {
  if (form.kind === "ions") return readIons(form, preferences);
  const { label, dimension } = TARGET_KINDS[form.kind];
  const read = parseAmount({ text: form.wanted, label, dimension, preferences });
  if (!read.ok) return read;
  const wanted = read.value;
  const words = `solved for ${label.toLowerCase()} ${form.wanted.trim()}`;
  if (form.kind === "gravity") return { ok: true, words, target: { kind: "gravity", wanted } };
  if (form.kind === "mash pH") {
    return { ok: true, words, target: { kind: "mash pH", acid: ACID_SOLUTIONS[form.acid], wanted } };
  }
  const index = (form.kind === "bitterness" ? keys.hops : keys.fermentables).indexOf(form.row);
  if (index === -1) return { ok: false, message: "Choose the row whose mass should give it" };
  const target: Target =
    form.kind === "bitterness"
      ? { kind: "bitterness", hop: index, wanted }
      : { kind: "colour", fermentable: index, wanted };
  return { ok: true, words, target };
}

function readIons({ ions }: TargetForm, preferences: Preferences): ReturnType<typeof readTarget> {
  const wanted: Partial<Record<Ion, number>> = {};
  for (const ion of IONS) {
    const text = ions[ion]?.trim() ?? "";
    if (text === "") continue;
    const read = readField({ field: ION_FIELDS[ion], text, preferences });
    if (!read.ok) return read;
    wanted[ion] = read.value;
  }
  if (Object.keys(wanted).length === 0) return { ok: false, message: "Write at least one ion, in mg/L" };
  return { ok: true, words: "solved for the ions wanted", target: { kind: "ions", wanted } };
}
