import { z } from "zod";
import { MEASURABLE } from "@/lib/calc/compare";
import { OutOfRangeError } from "@/lib/calc/errors";
import type { Measured } from "../log/log-event";
import { isSeries, LOGGED_QUANTITIES, loggedRange, type LoggedQuantity, type MeasuredKind } from "../log/series";
import { loggedLabel } from "../log/log-event-input";
import { INSTRUMENTS } from "../reading";
import { sdToLogUnit, SENSOR_UNITS, toLogUnit, unitsOf } from "./reading-units";

/** The most readings of one request. */
export const MOST_READINGS = { json: 1000, csv: 10_000 } as const;
export const READINGS_BYTES = { json: 512 * 1024, csv: 2 * 1024 * 1024 } as const;

/** Further ahead no clock of a sensor is by accident. */
const FUTURE_HOURS = 24;
const EARLIEST = Date.parse("2000-01-01T00:00:00Z");
// eslint-disable-next-line no-control-regex -- the control characters are what is refused
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;

const told = (issue: { readonly input?: unknown }): string => {
  const { input } = issue;
  if (input === undefined) return "is missing";
  return typeof input === "string" ? `“${input.slice(0, 40)}”` : JSON.stringify(input).slice(0, 40);
};
const id = (label: string) =>
  z.guid({ error: (issue) => `${label} ${told(issue)}: it takes the identifier of a record` });
const words = <const W extends string>(label: string, list: readonly W[]) =>
  z.enum(list, { error: (issue) => `${label} ${told(issue)}: it is one of ${list.join(", ")}` });
const number = (label: string) => z.number({ error: (issue) => `${label} ${told(issue)}: it takes a number` });

/** One reading as a sensor sends it, before its value is held against what is measured. */
export const sensorReading = z.strictObject({
  id: id("id")
    .optional()
    .meta({ description: "Made by the sender. Without one, sender, brew, quantity and time are it." }),
  brew: id("brew").optional().meta({ description: "Which brew. May be left out with a key that is for one brew." }),
  at: z.iso
    .datetime({
      offset: true,
      error: (issue) => `at ${told(issue)}: it takes a time with a zone, as 2026-11-28T10:00:00Z`,
    })
    .meta({ description: "When it was measured, ISO 8601 with a zone." }),
  quantity: words("quantity", LOGGED_QUANTITIES).meta({ description: "What is measured." }),
  value: number("value").meta({ description: "In the unit stated beside it." }),
  unit: words("unit", SENSOR_UNITS).meta({ description: "One that the quantity is measured in." }),
  sd: number("sd")
    .min(0, { error: (issue) => `sd ${told(issue)}: it takes a number from 0` })
    .optional()
    .meta({ description: "Standard uncertainty, in the unit of the value. Without one, what is typical is taken." }),
  instrument: words("instrument", INSTRUMENTS).optional().meta({ description: "Without one: probe." }),
  note: z
    .string({ error: (issue) => `note ${told(issue)}: it takes a text` })
    .max(500, { error: "note: it takes at most 500 characters" })
    .refine((text) => !CONTROL.test(text), { error: "note: it has characters that cannot be printed" })
    .optional()
    .meta({ description: "At most 500 characters." }),
});
export type SensorReading = z.output<typeof sensorReading>;

/** Standard uncertainty of a common probe, in the log's unit: common practice, no source. */
export const TYPICAL_SD: Readonly<Record<MeasuredKind, number>> = {
  temperature: 0.5,
  gravity: 0.25,
  volume: 0.3,
  duration: 1,
  ph: 0.05,
  pressure: 0.05,
  energy: 0.05,
};

export type MeasuredOrRefusal =
  | { readonly ok: true; readonly measured: Measured; readonly occurredAt: string }
  | { readonly ok: false; readonly reason: string };

/** A reading in the units of the log; or why it cannot be one, with the field, the value and what it takes. */
export function toMeasured(reading: SensorReading, now: Date): MeasuredOrRefusal {
  const at = Date.parse(reading.at);
  const refusal = refusedTime(reading.at, at, now) ?? refusedUnit(reading);
  if (refusal !== null) return { ok: false, reason: refusal };
  const { quantity, unit } = reading;
  const { kind, min, max } = loggedRange(quantity);
  const value = converted(() => toLogUnit(unit, reading.value));
  if (value === null || value < min || value > max) return { ok: false, reason: outside(reading, "value", value) };
  const sd =
    reading.sd === undefined ? typicalSd(quantity) : converted(() => sdToLogUnit(unit, reading.sd ?? 0, value));
  if (sd === null || sd > max - min) return { ok: false, reason: outside(reading, "sd", sd) };
  const { instrument = "probe", note = "" } = reading;
  const entered = `${String(reading.value)} ${unit}`;
  const measured = { kind, quantity, value, sd, instrument, sampleC: null, note: note.trim(), entered, step: null };
  return { ok: true, measured, occurredAt: new Date(at).toISOString() };
}

function typicalSd(quantity: LoggedQuantity): number {
  return isSeries(quantity) ? TYPICAL_SD[loggedRange(quantity).kind] : MEASURABLE[quantity].typicalSd;
}

function refusedTime(text: string, at: number, now: Date): string | null {
  if (Number.isNaN(at)) return `at “${text.slice(0, 40)}”: there is no such time`;
  const latest = now.getTime() + FUTURE_HOURS * 3_600_000;
  if (at >= EARLIEST && at <= latest) return null;
  return `at “${text.slice(0, 40)}”: it takes a time from the year 2000 to ${String(FUTURE_HOURS)} hours from now`;
}

function refusedUnit({ quantity, unit }: SensorReading): string | null {
  const units = unitsOf(loggedRange(quantity).kind);
  return units.includes(unit) ? null : `unit “${unit}”: ${loggedLabel(quantity)} is sent in ${units.join(", ")}`;
}

function converted(convert: () => number): number | null {
  try {
    return convert();
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

function outside(reading: SensorReading, field: "value" | "sd", logged: number | null): string {
  const { unit: own, min, max } = loggedRange(reading.quantity);
  const range = field === "sd" ? `0 to ${String(max - min)} ${own}` : `${String(min)} to ${String(max)} ${own}`;
  const as =
    logged === null || own === reading.unit ? "" : `, which is ${String(Number(logged.toPrecision(5)))} ${own}`;
  return `${field} ${String(reading[field])} ${reading.unit}${as}: ${loggedLabel(reading.quantity)} takes ${range}`;
}
