"use client";

import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { estimateOf, type PitchDraft } from "@/lib/ui/cellar/pitch-draft";
import { displayUnit } from "@/lib/ui/display-unit";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { CellsEstimated } from "./cells-estimated";

export interface PitchCellsProps {
  readonly draft: PitchDraft;
  readonly errors: FieldErrors;
  readonly preferences: Preferences;
  readonly type: (change: Partial<PitchDraft>) => void;
}

const FORMS = [
  { value: "dry", text: "dry" },
  { value: "liquid", text: "liquid" },
] as const;
const STARTERS = [
  { value: "none", text: "no starter" },
  { value: "still", text: "a starter, left still" },
  { value: "stirred", text: "a starter, stirred" },
] as const;

/** How many cells there are: counted, or estimated from packs, age and starter. */
export function PitchCells({ draft, errors, preferences, type }: PitchCellsProps) {
  return (
    <>
      <YeastInHand draft={draft} errors={errors} preferences={preferences} type={type} />
      <CellsEstimated draft={draft} estimate={estimateOf(draft, preferences)} preferences={preferences} />
      <NumberField
        name="pitch-cells"
        label="Cells pitched"
        unit="10⁹"
        hint="As counted. Empty takes the estimate, where there is one."
        value={draft.cells}
        onChange={(event) => type({ cells: event.target.value })}
        error={errors["pitch-cells"]}
      />
    </>
  );
}

function YeastInHand({ draft, errors, preferences, type }: PitchCellsProps) {
  const text = (name: string, field: keyof PitchDraft, label: string, unit: string) => (
    <NumberField
      name={name}
      label={label}
      unit={unit}
      value={draft[field]}
      onChange={(event) => type({ [field]: event.target.value })}
      error={errors[name]}
    />
  );
  const unitOf = (dimension: "volume" | "grams" | "temperature"): string => displayUnit(dimension, preferences).unit;
  return (
    <div className="grid grid-cols-2 gap-4">
      <SelectField
        name="pitch-form"
        label="Yeast is"
        value={draft.form}
        options={FORMS}
        onChange={(event) => type({ form: event.target.value === "liquid" ? "liquid" : "dry" })}
      />
      {text("pitch-packs", "packs", "Packs", "")}
      {text("pitch-per-pack", "perPack", "Cells in a pack when packed", "10⁹")}
      {text("pitch-age", "age", "Age of the packs", "days")}
      {text("pitch-stored", "stored", "Stored at", unitOf("temperature"))}
      <SelectField
        name="pitch-starter"
        label="Grown in"
        value={draft.starter}
        options={STARTERS}
        onChange={(event) =>
          type({ starter: STARTERS.find(({ value }) => value === event.target.value)?.value ?? "none" })
        }
      />
      {draft.starter === "none" ? null : text("pitch-starter-l", "starterL", "Starter", unitOf("volume"))}
      {draft.starter === "none" ? null : text("pitch-starter-g", "starterG", "Extract in the starter", unitOf("grams"))}
    </div>
  );
}
