"use client";

import type { ReactElement } from "react";
import { DraftNumber } from "./draft-number";
import { FieldGrid } from "./field-grid";
import { IngredientRows } from "./row-list";
import type { StationInputsProps } from "./station-inputs-props";

/** The boil and what goes into it. */
export function KettleInputs(props: StationInputsProps): ReactElement {
  const { draft, problems } = props;
  return (
    <div className="flex flex-col gap-5">
      <FieldGrid>
        <DraftNumber {...{ draft, problems }} name="boil" label="Length of the boil" />
        <DraftNumber {...{ draft, problems }} name="topUp" label="Water added after it" />
      </FieldGrid>
      <IngredientRows list="boilHops" {...props} />
      <IngredientRows list="kettleGrist" {...props} />
    </div>
  );
}
