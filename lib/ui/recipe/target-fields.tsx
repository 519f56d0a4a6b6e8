"use client";

import type { ReactElement } from "react";
import { IONS } from "@/lib/calc/water";
import { ION_FIELDS } from "@/lib/model/recipe-fields";
import { NumberField } from "../number-field";
import { SelectField } from "../select-field";
import { displayUnit } from "../display-unit";
import { ACID_LABELS, ACID_NAMES } from "./acid-names";
import { useEditor } from "./editor-context";
import { TARGET_KINDS, type TargetForm } from "./target-form";
import { useTargetRows } from "./use-target-rows";

export interface TargetFieldsProps {
  readonly form: TargetForm;
  readonly onChange: (change: Partial<TargetForm>) => void;
}

/** What is asked for: the kind of target, the row that carries it, and its number. */
export function TargetFields({ form, onChange }: TargetFieldsProps): ReactElement {
  const rows = useTargetRows(form.kind);
  return (
    <div className="fields-dense flex flex-wrap items-end gap-x-4 gap-y-2">
      <SelectField
        name="target.kind"
        label="What is wanted"
        value={form.kind}
        options={Object.entries(TARGET_KINDS).map(([value, each]) => ({ value, text: each.label }))}
        onChange={(event) => onChange({ kind: event.target.value as TargetForm["kind"], row: "" })} // its own values
      />
      {rows === null ? null : (
        <SelectField
          name="target.row"
          label={form.kind === "bitterness" ? "By weighing" : "By the mass of"}
          value={form.row}
          options={[{ value: "", text: "Choose a row" }, ...rows]}
          onChange={(event) => onChange({ row: event.target.value })}
        />
      )}
      {form.kind !== "mash pH" ? null : (
        <SelectField
          name="target.acid"
          label="By this acid"
          value={form.acid}
          options={ACID_NAMES.map((name) => ({ value: name, text: ACID_LABELS[name] }))}
          onChange={(event) => onChange({ acid: event.target.value as TargetForm["acid"] })} // its own values
        />
      )}
      <WantedNumbers form={form} onChange={onChange} />
    </div>
  );
}

function WantedNumbers({ form, onChange }: TargetFieldsProps): ReactElement {
  const { preferences } = useEditor();
  const { dimension, label } = TARGET_KINDS[form.kind];
  if (form.kind !== "ions") {
    return (
      <NumberField
        name="target.wanted"
        label={`Wanted ${label.toLowerCase()}`}
        unit={displayUnit(dimension, preferences).unit}
        value={form.wanted}
        onChange={(event) => onChange({ wanted: event.target.value })}
      />
    );
  }
  return (
    <>
      {IONS.map((ion) => (
        <NumberField
          key={ion}
          name={`target.${ion}`}
          label={`Wanted ${ION_FIELDS[ion].label.toLowerCase()}`}
          unit="mg/L"
          value={form.ions[ion] ?? ""}
          onChange={(event) => onChange({ ions: { ...form.ions, [ion]: event.target.value } })}
        />
      ))}
    </>
  );
}
