"use client";

import { memo, useState, type ReactElement } from "react";
import type { FieldErrors } from "@/lib/model/field-errors";
import { NumberField } from "../number-field";
import { fieldUnit } from "../read-field";
import { measuredFieldOf, type Draft, type MeasuredName } from "./draft";
import { useEditor } from "./editor-context";
import { StaticValue } from "./static-value";
import { unitBeside } from "./unit-beside";

/** One number of the recipe that stands alone, with its message once the field is left. */
export interface DraftNumberProps extends Shown {
  readonly draft: Draft;
  readonly problems: FieldErrors;
}

interface Shown {
  readonly name: MeasuredName;
  /** Where the screen calls it something shorter than the messages do. */
  readonly label?: string | undefined;
  readonly hint?: string | undefined;
}

export function DraftNumber({ draft, problems, ...shown }: DraftNumberProps): ReactElement {
  return <NumberControl {...shown} text={draft.fields[shown.name].text} error={problems[shown.name]} />;
}

/** Drawn again only when its own text or message changes, since every keystroke makes a new draft. */
const NumberControl = memo(function NumberControl(
  props: Shown & { readonly text: string; readonly error: string | undefined },
): ReactElement {
  const { name, label, hint, text, error } = props;
  const { preferences, isReadOnly, dispatch } = useEditor();
  const [isFocused, setFocused] = useState(false);
  const field = measuredFieldOf(name);
  const shown = label ?? field.label;
  const unit = fieldUnit(field, preferences);
  if (isReadOnly) return <StaticValue label={shown} text={text} unit={unitBeside(text, unit)} />;
  return (
    <NumberField
      name={name}
      label={shown}
      unit={unit}
      hint={hint}
      mayBeNegative={field.min < 0}
      maxLength={80}
      value={text}
      error={isFocused ? undefined : error}
      onChange={(event) => dispatch({ type: "type", field: name, text: event.target.value })}
      onFocus={(event) => {
        setFocused(true);
        event.target.select();
      }}
      onBlur={() => setFocused(false)}
    />
  );
});
