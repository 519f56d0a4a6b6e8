"use client";

import type { ReactElement } from "react";
import { fieldIds } from "../field-ids";
import type { Draft } from "./draft";
import { useEditor } from "./editor-context";

/** Free text about the recipe. */
export function RecipeNotes({ draft }: { readonly draft: Draft }): ReactElement | null {
  const { isReadOnly, dispatch } = useEditor();
  const { text } = draft.fields.notes;
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
