"use client";

import { displayUnit } from "@/lib/ui/display-unit";
import { NumberField } from "@/lib/ui/number-field";
import { TextField } from "@/lib/ui/text-field";
import { PitchCells, type PitchCellsProps } from "./pitch-cells";

/** Yeast, cells, temperature, time and a note. */
export function PitchFields(props: PitchCellsProps) {
  const { draft, errors, preferences, type } = props;
  return (
    <>
      <TextField
        name="pitch-yeast"
        label="Yeast"
        maxLength={120}
        value={draft.yeast}
        onChange={(event) => type({ yeast: event.target.value })}
        error={errors["pitch-yeast"]}
      />
      <PitchCells {...props} />
      <div className="grid gap-4 sm:grid-cols-2">
        <NumberField
          name="pitch-celsius"
          label="Temperature at pitching"
          unit={displayUnit("temperature", preferences).unit}
          value={draft.celsius}
          onChange={(event) => type({ celsius: event.target.value })}
          error={errors["pitch-celsius"]}
        />
        <TextField
          name="pitch-at"
          label="Time of pitching"
          hint="Empty means now."
          type="datetime-local"
          value={draft.at}
          onChange={(event) => type({ at: event.target.value })}
          error={errors["pitch-at"]}
        />
      </div>
      <TextField
        name="pitch-note"
        label="Note on the pitch"
        maxLength={500}
        value={draft.note}
        onChange={(event) => type({ note: event.target.value })}
      />
    </>
  );
}
