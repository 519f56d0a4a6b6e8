"use client";

import { displayUnit } from "@/lib/ui/display-unit";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import type { PackageFieldsProps } from "./package-fields";

const SUGARS = [
  { value: "sucrose", text: "table sugar (sucrose)" },
  { value: "dextroseMonohydrate", text: "dextrose monohydrate" },
  { value: "dextroseAnhydrous", text: "dextrose, anhydrous" },
  { value: "none", text: "none: forced from a cylinder" },
] as const;

type NumberName = "litres" | "lost" | "volumes" | "celsius" | "storage";

/** How much beer, how warm it was and will be, and how much gas by what means. */
export function BeerFields({ draft, errors, preferences, type }: PackageFieldsProps) {
  const { unit: volume } = displayUnit("volume", preferences);
  const { unit: degrees } = displayUnit("temperature", preferences);
  const number = (field: NumberName, label: string, unit: string, hint?: string) => (
    <NumberField
      name={`package-${field}`}
      label={label}
      unit={unit}
      hint={hint}
      value={draft[field]}
      onChange={(event) => type({ [field]: event.target.value })}
      error={errors[`package-${field}`]}
    />
  );
  return (
    <div className="grid gap-4 sm:grid-cols-2">
      {number("litres", "Beer to package", volume)}
      {number("lost", "Lost: left behind or spilt", volume)}
      {number("volumes", "Carbonation", "volumes of CO₂")}
      <SelectField
        name="package-sugar"
        label="Priming sugar"
        value={draft.sugar}
        options={SUGARS}
        onChange={(event) =>
          type({ sugar: SUGARS.find(({ value }) => value === event.target.value)?.value ?? "sucrose" })
        }
      />
      {number("celsius", "Warmest since fermentation ended", degrees, LOST_GAS)}
      {number("storage", "Warmest place where it will stand", degrees, WARM_PLACE)}
    </div>
  );
}

const LOST_GAS = "The gas that was lost then does not come back.";
const WARM_PLACE = "A car in summer counts. The pressure is that of this temperature.";
