"use client";

import type { ReactElement } from "react";
import { DraftNumber } from "./draft-number";
import { DraftSelect } from "./draft-select";
import { FieldGrid } from "./field-grid";

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
export function PackageInputs(): ReactElement {
  return (
    <FieldGrid>
      <DraftSelect name="packaging.container" label="Container" options={CONTAINERS} />
      <DraftNumber name="packaging.carbonation" />
      <DraftSelect name="packaging.priming" label="Priming" options={PRIMING} />
      <DraftNumber name="packaging.warmest" label="Warmest since fermentation" />
      <DraftNumber name="packaging.rated" label="Container is made for" />
    </FieldGrid>
  );
}
