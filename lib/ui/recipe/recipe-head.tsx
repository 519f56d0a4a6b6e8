"use client";

import type { ReactElement } from "react";
import { TextField } from "../text-field";
import { DraftNumber } from "./draft-number";
import { useEditor } from "./editor-context";
import type { KettleChoice } from "./editor-state";
import { FieldGrid } from "./field-grid";
import { KettleSelect } from "./kettle-choice";
import { StyleChoice } from "./style-choice";
import { useEditorValue } from "./use-editor-value";

/** What the recipe is, how much of it, on which kettle and on what kind of day. */
export function RecipeHead({ kettles }: { readonly kettles: readonly KettleChoice[] }): ReactElement {
  const { isReadOnly, dispatch } = useEditor();
  const title = useEditorValue(({ draft }) => draft.fields.title.text);
  return (
    <div className="fields-dense mb-2 flex flex-col gap-1">
      <div className="grid gap-x-4 gap-y-3 sm:grid-cols-2 lg:grid-cols-[minmax(0,2fr)_minmax(0,1.5fr)_minmax(0,1.5fr)_11rem] lg:items-end">
        {isReadOnly ? null : (
          <TextField
            name="title"
            label="Title"
            maxLength={160}
            value={title}
            onChange={(event) => dispatch({ type: "type", field: "title", text: event.target.value })}
          />
        )}
        <StyleChoice />
        {kettles.length > 1 ? <KettleSelect kettles={kettles} /> : null}
        <DraftNumber name="intoFermenter" />
      </div>
      <details>
        <summary className="cursor-pointer py-2 text-sm">The day: air, tap water and grain</summary>
        <FieldGrid>
          <DraftNumber name="ambient.air" label="Air" />
          <DraftNumber name="ambient.humidity" />
          <DraftNumber name="ambient.tapWater" label="Tap water" />
          <DraftNumber name="ambient.grain" label="Grain" />
        </FieldGrid>
      </details>
    </div>
  );
}
