"use client";

import type { ReactElement } from "react";
import { formatQuantity } from "../format-quantity";
import { TextField } from "../text-field";
import { NUMBER_FIELDS } from "./draft";
import { DraftNumber } from "./draft-number";
import { useEditor } from "./editor-context";
import { stored } from "./entry";
import { FieldGrid } from "./field-grid";
import { IngredientRows } from "./row-list";
import { StaticValue } from "./static-value";
import { useEditorValue } from "./use-editor-value";
import { named } from "./use-reference";

/** The yeast and what goes in with the beer. */
export function FermenterInputs(): ReactElement {
  return (
    <div className="flex flex-col gap-5">
      <FieldGrid>
        <div className="col-span-2">
          <YeastName />
        </div>
        <DraftNumber name="yeast.attenuationLow" />
        <DraftNumber name="yeast.attenuationHigh" />
        <DraftNumber name="yeast.pitch" />
        <DraftNumber name="yeast.celsius" label="Temperature" />
      </FieldGrid>
      <IngredientRows list="dryHops" />
    </div>
  );
}

/** A class of yeast brings its attenuation with it; its usual temperature is only told. */
function YeastName(): ReactElement {
  const { preferences, isReadOnly, dispatch, reference } = useEditor();
  const text = useEditorValue(({ draft }) => draft.fields["yeast.name"].text);
  const error = useEditorValue(({ reading }) => reading.problems["yeast.name"]);
  if (isReadOnly) return <StaticValue label="Yeast" text={text} unit="" />;
  const known = reference === null ? null : named(reference.yeasts, text);
  const celsius = (value: number): string => {
    const shown = formatQuantity({ value, dimension: "temperature", preferences, digits: 0 });
    return `${shown.text} ${shown.unit}`;
  };

  function choose(written: string): void {
    dispatch({ type: "type", field: "yeast.name", text: written });
    const chosen = reference === null ? null : named(reference.yeasts, written);
    if (chosen === null) return;
    const of = (name: "yeast.attenuationLow" | "yeast.attenuationHigh", value: number) =>
      stored({ field: NUMBER_FIELDS[name], value, preferences });
    dispatch({
      type: "fill",
      entries: {
        "yeast.attenuationLow": of("yeast.attenuationLow", chosen.attenuationLow),
        "yeast.attenuationHigh": of("yeast.attenuationHigh", chosen.attenuationHigh),
      },
    });
  }

  return (
    <TextField
      name="yeast.name"
      label="Yeast"
      list="yeast-classes"
      hint={known === null ? undefined : `Usually at ${celsius(known.celsiusLow)} to ${celsius(known.celsiusHigh)}.`}
      maxLength={80}
      autoComplete="off"
      value={text}
      error={error}
      onChange={(event) => choose(event.target.value)}
    />
  );
}
