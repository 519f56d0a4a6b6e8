"use client";

import { COLUMN_UNITS, type CsvChoices } from "@/lib/model/cellar/csv/columns";
import { isZone } from "@/lib/model/zoned-time";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";

interface CsvColumnsProps {
  readonly header: readonly string[];
  readonly choices: CsvChoices;
  readonly choose: (choices: CsvChoices) => void;
}

const NOTHING = { value: "", text: "nothing that is taken" };
const UNITS = [NOTHING, ...COLUMN_UNITS.map(({ id, text }) => ({ value: id, text }))];

/** Which column is the time, in which zone, and what the others hold. */
export function CsvColumns({ header, choices, choose }: CsvColumnsProps) {
  const { time, zone, values } = choices;

  function setUnit(column: number, id: string): void {
    const unit = COLUMN_UNITS.find((each) => each.id === id)?.id;
    const others = values.filter((each) => each.column !== column);
    choose({ ...choices, values: unit === undefined ? others : [...others, { column, unit }] });
  }

  return (
    <>
      <SelectField
        name="csv-time"
        label="Column of the times"
        value={String(time)}
        onChange={(event) => choose({ ...choices, time: Number(event.target.value) })}
        options={header.map((name, i) => ({ value: String(i), text: columnName(name, i) }))}
      />
      <TextField
        name="csv-zone"
        label="Time zone of the file"
        hint="Such as Europe/London, or UTC. Times that name a zone of their own keep it."
        value={zone}
        onChange={(event) => choose({ ...choices, zone: event.target.value })}
        error={isZone(zone) ? undefined : `Time zone “${zone}” is not one of the list, such as Europe/London`}
      />
      {header.map((name, i) =>
        i === time ? null : (
          <SelectField
            key={i}
            name={`csv-column-${String(i)}`}
            label={`${columnName(name, i)} holds`}
            value={values.find(({ column }) => column === i)?.unit ?? ""}
            onChange={(event) => setUnit(i, event.target.value)}
            options={UNITS}
          />
        ),
      )}
    </>
  );
}

function columnName(name: string, index: number): string {
  return name === "" ? `Column ${String(index + 1)}` : name;
}
