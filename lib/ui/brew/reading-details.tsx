"use client";

import type { ReactElement } from "react";
import { displayUnit } from "../display-unit";
import { NumberField } from "../number-field";
import { SelectField } from "../select-field";
import { TextField } from "../text-field";
import type { ReadingFieldsProps } from "./reading-fields";

/** What is mostly as usual: how it was measured, how sure it is, when, and a note. */
export function ReadingDetails({ name, point, preferences, draft, errors, type }: ReadingFieldsProps): ReactElement {
  const { unit } = displayUnit(point.dimension, preferences);
  const isWrong = errors.sd !== undefined || errors.at !== undefined;
  return (
    <details open={isWrong ? true : undefined}>
      <summary className="flex cursor-pointer items-center text-muted">
        {draft.instrument}, ± {draft.sd} {unit}, {draft.at === "" ? "now" : "at a time given"}
        {draft.note === "" ? "" : ", with a note"}
        <span className="ml-2 underline">change</span>
      </summary>
      <div className="grid gap-3 py-2 sm:grid-cols-2">
        <SelectField
          name={`${name}-instrument`}
          label="Measured with"
          value={draft.instrument}
          onChange={(event) => type("instrument", event.target.value)}
          options={point.instruments.map((each) => ({ value: each, text: each }))}
        />
        <NumberField
          name={`${name}-sd`}
          label="Uncertainty, ±"
          unit={unit}
          hint="One standard uncertainty: two readings of three lie this near."
          value={draft.sd}
          onChange={(event) => type("sd", event.target.value)}
          error={errors.sd}
        />
        <TextField
          name={`${name}-at`}
          label="Time of the reading"
          hint="Empty means now."
          type="datetime-local"
          value={draft.at}
          onChange={(event) => type("at", event.target.value)}
          error={errors.at}
        />
        <TextField
          name={`${name}-note`}
          label="Note"
          maxLength={500}
          value={draft.note}
          onChange={(event) => type("note", event.target.value)}
        />
      </div>
    </details>
  );
}
