import type { ComparedRow } from "@/lib/calc/compare";
import type { ExplainedNumber, ExplanationInput, SourceReference } from "@/lib/calc/explain";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { readingRange, type Reading } from "@/lib/model/reading";
import { currentReadings } from "@/lib/model/current-readings";
import { WORT_CORRECTION } from "@/lib/ui/brew/read-gravity";
import { uncertaintyText } from "@/lib/ui/brew/reading-uncertainty";
import { displayUnit } from "@/lib/ui/display-unit";
import { formatQuantity } from "@/lib/ui/format-quantity";
import type { Explained } from "./explained";

/** A measured number: who read it on what, what was typed, and what the other readings make of it. */
export function explainReading(row: ComparedRow, { brew, preferences }: Explained): ExplainedNumber | null {
  const reading = [...currentReadings(brew.readings).values()].find(({ quantity }) => quantity === row.quantity);
  if (reading === undefined) return null;
  const { label, dimension } = QUANTITIES[reading.quantity];
  const range = readingRange(reading.quantity);
  const bound = (value: number): string => {
    const { text, unit } = formatQuantity({ value, dimension, preferences });
    return `${text} ${unit}`;
  };
  return {
    label: `${label}, measured`,
    value: reading.value,
    dimension,
    words: whoAndWhen(reading),
    equation: equationOf(reading),
    inputs: inputsOf(reading, row, preferences),
    sources: [sourceOf(reading)],
    validRange: `Readings from ${bound(range.min)} to ${bound(range.max)}.`,
    whatIf: [],
  };
}

function whoAndWhen({ actorName, occurredAt, instrument, entered, note }: Reading): string {
  const when = new Intl.DateTimeFormat("en-GB", { dateStyle: "long", timeStyle: "short" }).format(occurredAt);
  const remark = note === "" ? "" : ` Note: “${note}”.`;
  return `Read by ${actorName} on ${when}, with: ${instrument}. Entered as “${entered}”.${remark}`;
}

function equationOf({ instrument, sampleC }: Reading): string {
  if (instrument === "hydrometer" && sampleC !== null) {
    return "gravity at 20 °C = reading × density of water at 20 °C / density of water at the sample’s temperature, less what the glass expands";
  }
  if (instrument === "refractometer") return `extract = reading in °Bx / ${WORT_CORRECTION}`;
  return "the reading as it was given";
}

function sourceOf({ instrument, sampleC }: Reading): SourceReference {
  return instrument === "hydrometer" && sampleC !== null
    ? { anchor: "kell-1975", title: "Kell 1975: density of water" }
    : { anchor: "trade-practice", title: "Common practice, no source" };
}

function inputsOf(
  { quantity, value, sd, sampleC }: Reading,
  { reconciled }: ComparedRow,
  preferences: Preferences,
): readonly ExplanationInput[] {
  const { dimension } = QUANTITIES[quantity];
  const { unit } = displayUnit(dimension, preferences);
  const uncertainty = Number(uncertaintyText(sd, dimension, preferences, value));
  return [
    { label: "Stated standard uncertainty", value: uncertainty, dimension: null, unit },
    ...(sampleC === null
      ? []
      : [{ label: "Temperature of the sample", value: sampleC, dimension: "temperature" as const, unit: "" }]),
    ...(reconciled === null
      ? []
      : [{ label: "What the balances of all readings make of it", value: reconciled, dimension, unit: "" }]),
  ];
}
