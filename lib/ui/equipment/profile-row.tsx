"use client";

import { useState, type ReactElement } from "react";
import type { FigureOrigin } from "@/lib/calc/ledger";
import { EQUIPMENT_FIELDS, type EquipmentField } from "@/lib/model/equipment-fields";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { NumberField } from "../number-field";
import { fieldUnit } from "../read-field";
import { SelectField } from "../select-field";
import { typed, type Entry } from "../recipe/entry";
import { isFigure, type EquipmentDraft, type FigureEntries, type FigureName } from "./equipment-draft";

export interface ProfileRowProps {
  readonly name: EquipmentField;
  readonly how: string;
  readonly draft: EquipmentDraft;
  readonly problems: FieldErrors;
  readonly preferences: Preferences;
  readonly onNumber: (name: keyof EquipmentDraft["numbers"], entry: Entry) => void;
  readonly onFigure: (name: keyof EquipmentDraft["figures"], entries: FigureEntries) => void;
}

const ORIGINS: readonly { readonly value: FigureOrigin; readonly text: string }[] = [
  { value: "typical", text: "Typical of its kind" },
  { value: "stated", text: "Stated by maker or owner" },
  { value: "measured", text: "Measured" },
  { value: "learned", text: "Learned from brews" },
];

/** One number of a profile; a figure comes with its uncertainty, its origin and how many brews it rests on. */
export function ProfileRow(props: ProfileRowProps): ReactElement {
  const { name, how, draft, problems, preferences } = props;
  const { label } = EQUIPMENT_FIELDS[name];
  const unit = fieldUnit(EQUIPMENT_FIELDS[name], preferences);
  if (!isFigure(name)) {
    return (
      <EntryField
        {...{ name, label, unit, how }}
        entry={draft.numbers[name]}
        error={problems[name]}
        onType={(entry) => props.onNumber(name, entry)}
      />
    );
  }
  return (
    <FigureRow
      {...{ name, label, unit, how, problems }}
      figure={draft.figures[name]}
      onChange={(entries) => props.onFigure(name, entries)}
    />
  );
}

interface FigureRowProps {
  readonly name: FigureName;
  readonly label: string;
  readonly unit: string;
  readonly how: string;
  readonly figure: FigureEntries;
  readonly problems: FieldErrors;
  readonly onChange: (entries: FigureEntries) => void;
}

function FigureRow({ name, label, unit, how, figure, problems, onChange }: FigureRowProps): ReactElement {
  const change = (part: Partial<FigureEntries>): void => onChange({ ...figure, ...part });
  // Whoever types a value of their own no longer has the typical one.
  const from = figure.from === "typical" ? "stated" : figure.from;
  return (
    <fieldset className="sm:col-span-2 lg:col-span-3">
      <legend className="sr-only">{label}</legend>
      <div className="grid grid-cols-2 items-end gap-x-4 gap-y-2 sm:grid-cols-[minmax(0,1.6fr)_9rem_minmax(0,1fr)_6rem]">
        <div className="col-span-2 sm:col-span-1">
          <EntryField
            {...{ name, label, unit, how }}
            entry={figure.value}
            error={problems[name]}
            onType={(value) => change({ value, from, basis: undefined })}
          />
        </div>
        <EntryField
          name={`${name}.sd`}
          label="Give or take"
          unit={unit}
          entry={figure.sd}
          error={problems[`${name}.sd`]}
          onType={(sd) => change({ sd, basis: undefined })}
        />
        <SelectField
          name={`${name}.from`}
          label="From"
          options={ORIGINS}
          value={figure.from}
          onChange={(event) =>
            change({ from: ORIGINS.find(({ value }) => value === event.target.value)?.value ?? "stated" })
          }
        />
        <EntryField
          name={`${name}.count`}
          label="Brews"
          unit=""
          entry={figure.count}
          error={problems[`${name}.count`]}
          onType={(count) => change({ count })}
        />
      </div>
      {figure.basis === undefined ? null : <p className="text-sm text-muted">By: {figure.basis}.</p>}
    </fieldset>
  );
}

/** A number field that keeps its message back while somebody is in it. */
function EntryField(props: {
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  readonly how?: string;
  readonly entry: Entry;
  readonly error: string | undefined;
  readonly onType: (entry: Entry) => void;
}): ReactElement {
  const { name, label, unit, how, entry, error, onType } = props;
  const [isFocused, setFocused] = useState(false);
  return (
    <NumberField
      name={name}
      label={label}
      unit={unit}
      hint={how}
      mayBeNegative
      maxLength={40}
      value={entry.text}
      error={isFocused ? undefined : error}
      onChange={(event) => onType(typed(event.target.value))}
      onFocus={(event) => {
        setFocused(true);
        event.target.select();
      }}
      onBlur={() => setFocused(false)}
    />
  );
}
