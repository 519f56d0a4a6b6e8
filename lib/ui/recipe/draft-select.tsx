"use client";

import type { ReactElement } from "react";
import { SelectField } from "../select-field";
import type { Draft, DraftField } from "./draft";
import { useEditor } from "./editor-context";
import { StaticValue } from "./static-value";

/** A choice of the recipe. */
export interface DraftSelectProps {
  readonly draft: Draft;
  readonly name: DraftField;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
  readonly hint?: string;
}

export function DraftSelect({ draft, name, label, options, hint }: DraftSelectProps): ReactElement {
  const { isReadOnly, dispatch } = useEditor();
  const { text } = draft.fields[name];
  if (isReadOnly) {
    const chosen = options.find(({ value }) => value === text);
    return <StaticValue label={label} text={chosen?.text ?? text} unit="" />;
  }
  return (
    <SelectField
      name={name}
      label={label}
      hint={hint}
      options={options}
      value={text}
      onChange={(event) => dispatch({ type: "type", field: name, text: event.target.value })}
    />
  );
}
