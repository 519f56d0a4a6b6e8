"use client";

import type { ReactElement } from "react";
import { DraftNumber } from "./draft-number";
import { DraftSelect } from "./draft-select";
import { FieldGrid } from "./field-grid";
import type { StationInputsProps } from "./station-inputs-props";

const CONTAINERS = [
  { value: "bottle", text: "Bottle" },
  { value: "keg", text: "Keg" },
] as const;

const PRIMING = [
  { value: "sucrose", text: "Sucrose (table sugar)" },
  { value: "dextroseMonohydrate", text: "Dextrose, monohydrate" },
  { value: "dextroseAnhydrous", text: "Dextrose, anhydrous" },
  { value: "", text: "None, from a cylinder" },
] as const;

/** What the beer is put into, and how it comes by its carbonation. */
export function PackageInputs({ draft, problems }: StationInputsProps): ReactElement {
  return (
    <FieldGrid>
      <DraftSelect draft={draft} name="packaging.container" label="Container" options={CONTAINERS} />
      <DraftNumber {...{ draft, problems }} name="packaging.carbonation" />
      <DraftSelect draft={draft} name="packaging.priming" label="Priming" options={PRIMING} />
      <DraftNumber {...{ draft, problems }} name="packaging.warmest" label="Warmest since fermentation" />
      <DraftNumber {...{ draft, problems }} name="packaging.rated" label="Container is made for" />
    </FieldGrid>
  );
}
