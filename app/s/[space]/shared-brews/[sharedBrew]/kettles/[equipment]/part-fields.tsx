"use client";

import { useSyncExternalStore } from "react";
import { IONS, type Ions } from "@/lib/calc/water";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { DayWindow } from "@/lib/model/plain-day";
import { ION_FIELDS } from "@/lib/model/recipe-fields";
import type { SharedBrewRules } from "@/lib/model/shared-brew-rules";
import { localTime } from "@/lib/model/zoned-time";
import { NumberField } from "@/lib/ui/number-field";
import { TextField } from "@/lib/ui/text-field";

interface PartFieldsProps {
  readonly part: {
    readonly brewAt: Date | null;
    readonly zone: string | null;
    readonly water: Ions | null;
    readonly yeast: string;
  };
  readonly window: DayWindow | null;
  readonly rules: SharedBrewRules;
  readonly errors: FieldErrors;
}

const USUAL_START = "09:00";

/** The day, the water and the yeast of one member. */
export function PartFields({ part, window, rules, errors }: PartFieldsProps) {
  const { water, yeast } = part;
  return (
    <>
      <DayFields part={part} window={window} errors={errors} />
      <WaterFields water={water} isOpen={rules.water !== "as written"} errors={errors} />
      {rules.yeast.same ? (
        <input type="hidden" name="yeast" value={yeast} />
      ) : (
        <TextField
          name="yeast"
          label="Your yeast"
          hint="Name or lot; the sheet keeps the attenuation of the recipe."
          maxLength={80}
          autoComplete="off"
          defaultValue={yeast}
          error={errors.yeast}
        />
      )}
    </>
  );
}

function DayFields({ part, window, errors }: Pick<PartFieldsProps, "part" | "window" | "errors">) {
  const deviceZone = useSyncExternalStore(never, zoneOfDevice, () => "UTC");
  const { brewAt, zone } = part;
  const local = brewAt === null || zone === null ? null : localTime(brewAt, zone);
  return (
    <div className="grid gap-4 sm:grid-cols-3">
      <TextField
        name="brewDay.day"
        label="Brew day"
        type="date"
        min={window?.from}
        max={window?.to}
        defaultValue={local?.day}
        error={errors["brewDay.day"]}
      />
      <TextField
        name="brewDay.time"
        label="Start"
        type="time"
        defaultValue={local?.time ?? USUAL_START}
        error={errors["brewDay.time"]}
      />
      <TextField
        key={deviceZone}
        name="brewDay.zone"
        label="Time zone"
        autoComplete="off"
        defaultValue={zone ?? deviceZone}
        error={errors["brewDay.zone"]}
      />
    </div>
  );
}

function WaterFields(props: { readonly water: Ions | null; readonly isOpen: boolean; readonly errors: FieldErrors }) {
  const { water, isOpen, errors } = props;
  return (
    <details open={isOpen}>
      <summary className="cursor-pointer py-3">Your own water</summary>
      <p className="field-hint mb-2">From the report of your supplier. Empty takes the water of the recipe.</p>
      <div className="grid grid-cols-2 gap-4 sm:grid-cols-3">
        {IONS.map((ion) => (
          <NumberField
            key={ion}
            name={`water.${ion}`}
            label={ION_FIELDS[ion].label}
            unit="mg/L"
            defaultValue={water === null ? "" : String(water[ion])}
            error={errors[`water.${ion}`]}
          />
        ))}
      </div>
    </details>
  );
}

function zoneOfDevice(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** The zone of a device does not change while a form is open. */
function never(): () => void {
  return () => undefined;
}
