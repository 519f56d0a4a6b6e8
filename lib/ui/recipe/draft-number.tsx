"use client";

import { useCallback, useState, type ReactElement } from "react";
import { amountEcho } from "../amount-echo";
import { NumberField } from "../number-field";
import { fieldUnit } from "../read-field";
import { measuredFieldOf, type MeasuredName } from "./draft";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { StaticValue } from "./static-value";
import { unitBeside } from "./unit-beside";
import { useEditorValue } from "./use-editor-value";

/** One number of the recipe that stands alone, with its message once the field is left. */
export interface DraftNumberProps {
  readonly name: MeasuredName;
  /** Where the screen calls it something shorter than the messages do. */
  readonly label?: string | undefined;
  readonly hint?: string | undefined;
}

export function DraftNumber({ name, label, hint }: DraftNumberProps): ReactElement {
  const { text, solvedFor } = useEditorValue(useCallback(({ draft }: EditorState) => draft.fields[name], [name]));
  const error = useEditorValue(useCallback(({ reading }: EditorState) => reading.problems[name], [name]));
  const { preferences, isReadOnly, dispatch } = useEditor();
  const [isFocused, setFocused] = useState(false);
  const field = measuredFieldOf(name);
  const shown = label ?? field.label;
  const unit = fieldUnit(field, preferences);
  if (isReadOnly) return <StaticValue label={shown} text={text} unit={unitBeside(text, unit)} />;
  const note = solvedFor ?? amountEcho({ text, field, preferences });
  return (
    <div>
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
      {note === null ? null : <span className="block text-sm text-muted">{note}</span>}
    </div>
  );
}
