"use client";

import type { ReactElement } from "react";
import { DraftNumber } from "./draft-number";
import { FieldGrid } from "./field-grid";
import { IngredientRows } from "./row-list";

/** The boil and what goes into it. */
export function KettleInputs(): ReactElement {
  return (
    <div className="flex flex-col gap-5">
      <FieldGrid>
        <DraftNumber name="boil" label="Length of the boil" />
        <DraftNumber name="topUp" label="Water added after it" />
      </FieldGrid>
      <IngredientRows list="boilHops" />
      <IngredientRows list="kettleGrist" />
    </div>
  );
}
