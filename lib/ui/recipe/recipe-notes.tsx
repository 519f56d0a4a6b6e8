"use client";

import type { ReactElement } from "react";
import { fieldIds } from "../field-ids";
import { useEditor } from "./editor-context";
import { useEditorValue } from "./use-editor-value";

/** Free text about the recipe. */
export function RecipeNotes(): ReactElement | null {
  const { isReadOnly, dispatch } = useEditor();
  const text = useEditorValue(({ draft }) => draft.fields.notes.text);
  const { control } = fieldIds("notes");
  if (isReadOnly) {
    return text === "" ? null : (
      <section className="mt-8" aria-labelledby="notes-heading">
        <h2 id="notes-heading">Notes</h2>
        <p className="whitespace-pre-wrap">{text}</p>
      </section>
    );
  }
  return (
    <div className="field mt-8 max-w-3xl">
      <label className="field-label" htmlFor={control}>
        Notes
      </label>
      <textarea
        id={control}
        name="notes"
        className="input"
        rows={4}
        maxLength={20000}
        value={text}
        onChange={(event) => dispatch({ type: "type", field: "notes", text: event.target.value })}
      />
    </div>
  );
}
