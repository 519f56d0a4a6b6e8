"use client";

import type { ReactElement } from "react";
import { SelectField } from "../select-field";
import { useEditor } from "./editor-context";
import type { KettleChoice } from "./editor-state";
import { useEditorValue } from "./use-editor-value";

/** The kettle on which the ledger is computed. Reading a recipe on another kettle changes nothing in it. */
export function KettleSelect({ kettles }: { readonly kettles: readonly KettleChoice[] }): ReactElement {
  const { dispatch } = useEditor();
  const chosen = useEditorValue(({ kettle }) => kettle);
  return (
    <SelectField
      name="kettle"
      label="Computed on"
      options={kettles.map(({ id, label }) => ({ value: id, text: label }))}
      value={chosen}
      onChange={(event) => dispatch({ type: "choose kettle", kettle: event.target.value })}
    />
  );
}
