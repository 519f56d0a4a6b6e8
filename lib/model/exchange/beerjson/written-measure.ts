import type { PlainRecord } from "../file-node";
import { writtenNumber } from "../written-number";

export function measure(value: number, unit: string): PlainRecord {
  return { value: writtenNumber(value), unit };
}

/** The standard takes whole numbers of a unit of time, so a part of a minute is written in seconds. */
export function time(minutes: number): PlainRecord {
  return Number.isInteger(minutes) ? { value: minutes, unit: "min" } : { value: Math.round(60 * minutes), unit: "sec" };
}
