"use client";

import type { ReactElement } from "react";
import { SelectField } from "../select-field";
import { useEditor } from "./editor-context";
import type { KettleChoice } from "./editor-state";

/** The kettle on which the ledger is computed. Reading a recipe on another kettle changes nothing in it. */
export function KettleSelect(props: {
  readonly kettles: readonly KettleChoice[];
  readonly kettle: string;
}): ReactElement {
  const { dispatch } = useEditor();
  return (
    <SelectField
      name="kettle"
      label="Computed on"
      options={props.kettles.map(({ id, label }) => ({ value: id, text: label }))}
      value={props.kettle}
      onChange={(event) => dispatch({ type: "choose kettle", kettle: event.target.value })}
    />
  );
}
