import type { ComparedRow } from "@/lib/calc/compare";
import type { ExplainedNumber } from "@/lib/calc/explain";
import { QUANTITIES } from "@/lib/calc/ledger";
import { meterLog } from "@/lib/model/meter-readings";
import type { Explained } from "./explained";

/** The electricity of the day, by the meter: what it stood at first and last. */
export function explainMeter(row: ComparedRow, { brew }: Explained): ExplainedNumber | null {
  const read = meterLog(brew);
  const [first] = read;
  const last = read.at(-1);
  if (first === undefined || last === undefined) return null;
  const { label, dimension } = QUANTITIES[row.quantity];
  return {
    label: `${label}, measured`,
    value: row.measured,
    dimension,
    words: `The meter was read ${String(read.length)} times, first by ${first.actorName} and last by ${last.actorName}. What else hangs on the same meter is in it.`,
    equation: "energy = last reading − first reading",
    inputs: [
      { label: "Meter at the start", value: first.measured.value, dimension, unit: "" },
      { label: "Meter at the end", value: last.measured.value, dimension, unit: "" },
      { label: "Standard uncertainty of each reading", value: last.measured.sd, dimension: null, unit: "kWh" },
    ],
    sources: [{ anchor: "jcgm-100-2008", title: "JCGM 100:2008: uncertainty of a difference" }],
    validRange: "Readings from 0 to 1 000 000 kWh that do not run back.",
    whatIf: [],
  };
}
