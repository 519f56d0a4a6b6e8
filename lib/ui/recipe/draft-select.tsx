"use client";

import { useCallback, type ReactElement } from "react";
import { SelectField } from "../select-field";
import type { DraftField } from "./draft";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { StaticValue } from "./static-value";
import { useEditorValue } from "./use-editor-value";

/** A choice of the recipe. */
export interface DraftSelectProps {
  readonly name: DraftField;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
  readonly hint?: string;
}

export function DraftSelect({ name, label, options, hint }: DraftSelectProps): ReactElement {
  const { isReadOnly, dispatch } = useEditor();
  const text = useEditorValue(useCallback(({ draft }: EditorState) => draft.fields[name].text, [name]));
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
