"use client";

import { amountUnitText, needsSampleTemperature, sampleLabel } from "@/lib/ui/brew/reading-draft";
import { displayUnit } from "@/lib/ui/display-unit";
import { NumberField } from "@/lib/ui/number-field";
import type { ReadingFieldsProps } from "@/lib/ui/brew/reading-fields";

/** The number itself, and the temperature of the sample where the instrument depends on it. */
export function ReadingAmount({ name, point, preferences, draft, errors, type }: ReadingFieldsProps) {
  return (
    <>
      <NumberField
        name={`${name}-amount`}
        label={point.label}
        unit={amountUnitText(draft, point, preferences)}
        value={draft.amount}
        onChange={(event) => type("amount", event.target.value)}
        onFocus={(event) => event.target.select()}
        error={errors.amount}
      />
      {needsSampleTemperature(draft, point) ? (
        <NumberField
          name={`${name}-sample`}
          label={sampleLabel(point)}
          unit={displayUnit("temperature", preferences).unit}
          value={draft.sample}
          onChange={(event) => type("sample", event.target.value)}
          onFocus={(event) => event.target.select()}
          error={errors.sample}
        />
      ) : null}
    </>
  );
}
