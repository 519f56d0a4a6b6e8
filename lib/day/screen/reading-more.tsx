import type { ReactElement } from "react";
import type { MeasuringPoint } from "@/lib/ui/brew/reading-draft";
import { displayUnit } from "@/lib/ui/display-unit";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";
import { useDay } from "./day-context";
import type { ReadingEntryState } from "./use-reading-entry";

/** What is mostly as usual: how it was measured, how sure it is, when, and a note. */
export function ReadingMore({
  entry: { draft, errors, type },
  point,
}: {
  readonly entry: ReadingEntryState;
  readonly point: MeasuringPoint;
}): ReactElement {
  const { preferences } = useDay();
  const { unit } = displayUnit(point.dimension, preferences);
  const isWrong = errors.sd !== undefined || errors.at !== undefined;
  return (
    <details open={isWrong ? true : undefined}>
      <summary className="target">
        {draft.instrument}, ± {draft.sd} {unit}, {draft.at === "" ? "now" : "at a time given"}
      </summary>
      <div className="grid gap-3 py-2 sm:grid-cols-2">
        <How entry={{ draft, errors, type }} point={point} unit={unit} />
        <When entry={{ draft, errors, type }} />
      </div>
    </details>
  );
}

type MoreFields = Pick<ReadingEntryState, "draft" | "errors" | "type">;

function How({
  entry: { draft, errors, type },
  point,
  unit,
}: {
  readonly entry: MoreFields;
  readonly point: MeasuringPoint;
  readonly unit: string;
}): ReactElement {
  return (
    <>
      <SelectField
        name="day-instrument"
        label="Measured with"
        value={draft.instrument}
        onChange={(event) => type("instrument", event.target.value)}
        options={point.instruments.map((each) => ({ value: each, text: each }))}
      />
      <NumberField
        name="day-sd"
        label="Uncertainty, ±"
        unit={unit}
        hint="One standard uncertainty: two readings of three lie this near."
        value={draft.sd}
        onChange={(event) => type("sd", event.target.value)}
        error={errors.sd}
      />
    </>
  );
}

function When({ entry: { draft, errors, type } }: { readonly entry: MoreFields }): ReactElement {
  return (
    <>
      <TextField
        name="day-at"
        label="Time of the reading"
        hint="Empty means now."
        type="datetime-local"
        value={draft.at}
        onChange={(event) => type("at", event.target.value)}
        error={errors.at}
      />
      <TextField
        name="day-note"
        label="Note"
        maxLength={500}
        value={draft.note}
        onChange={(event) => type("note", event.target.value)}
      />
    </>
  );
}
