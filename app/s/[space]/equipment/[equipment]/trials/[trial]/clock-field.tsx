"use client";

import { TextField } from "@/lib/ui/text-field";

interface ClockFieldProps {
  readonly name: string;
  readonly value: string;
  readonly onChange: (clock: string) => void;
}

/** The time of a reading by the clock of this device; empty means now. */
export function ClockField({ name, value, onChange }: ClockFieldProps) {
  return (
    <TextField
      name={name}
      type="time"
      step={1}
      label="Read at"
      hint="Empty: when it is saved."
      value={value}
      onChange={(event) => onChange(event.target.value)}
    />
  );
}
