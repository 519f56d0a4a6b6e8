"use client";

import type { ReactElement } from "react";
import { DraftNumber } from "./draft-number";
import { DraftSelect } from "./draft-select";
import { FieldGrid } from "./field-grid";
import { MaltPhFigures } from "./malt-ph-figures";
import { IngredientRows } from "./row-list";

const MASHES = [
  { value: "1", text: "One" },
  { value: "2", text: "Two, one after the other" },
] as const;

/** The grist and how it is mashed. */
export function MashInputs(): ReactElement {
  return (
    <div className="flex flex-col gap-5">
      <IngredientRows list="mashGrist" />
      <MaltPhFigures />
      <IngredientRows list="steps" />
      <FieldGrid>
        <DraftNumber name="thickness" hint="Empty mashes with all the water." />
        <DraftSelect name="mashes" label="Mashes" options={MASHES} />
      </FieldGrid>
    </div>
  );
}
