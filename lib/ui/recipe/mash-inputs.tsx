"use client";

import type { ReactElement } from "react";
import { DraftNumber } from "./draft-number";
import { DraftSelect } from "./draft-select";
import { FieldGrid } from "./field-grid";
import { IngredientRows } from "./row-list";
import type { StationInputsProps } from "./station-inputs-props";

const MASHES = [
  { value: "1", text: "One" },
  { value: "2", text: "Two, one after the other" },
] as const;

/** The grist and how it is mashed. */
export function MashInputs(props: StationInputsProps): ReactElement {
  const { draft, problems } = props;
  return (
    <div className="flex flex-col gap-5">
      <IngredientRows list="mashGrist" {...props} />
      <IngredientRows list="steps" {...props} />
      <FieldGrid>
        <DraftNumber {...{ draft, problems }} name="thickness" hint="Empty mashes with all the water." />
        <DraftSelect draft={draft} name="mashes" label="Mashes" options={MASHES} />
      </FieldGrid>
    </div>
  );
}
