import { z } from "zod";
import { QUANTITIES } from "@/lib/calc/ledger";
import { celsius } from "@/lib/calc/units";
import { counted, measured, ranged } from "./measured";
import { INSTRUMENTS, MEASURABLE_IDS, readingRange, type MeasurableId } from "./reading";
import { oneOf, optionalText, recordId } from "./written";

const EARLIEST = new Date("2000-01-01T00:00:00Z");

const common = {
  id: recordId,
  brewId: recordId,
  deviceId: recordId,
  deviceSeq: counted("Number of the entry", { min: 1, max: Number.MAX_SAFE_INTEGER }),
  instrument: oneOf("Instrument", INSTRUMENTS),
  sampleC: measured("Sample temperature", celsius, { min: -5, max: 110 }).nullable(),
  occurredAt: z.coerce
    .date({ error: "Time of the reading is not a time" })
    .min(EARLIEST, "Time of the reading is before the year 2000"),
  note: optionalText("Note", 500),
  entered: z.string().max(80),
};

function readingOf(quantity: MeasurableId) {
  const { unit, min, max } = readingRange(quantity);
  const { label } = QUANTITIES[quantity];
  return z.strictObject({
    ...common,
    quantity: z.literal(quantity),
    value: ranged(label, { unit, min, max }),
    sd: ranged(`${label}, uncertainty`, { unit, min: 0, max: max - min }),
  });
}

/** A reading as a phone sends it; the range of the value depends on what is measured. */
export const readingInput = z
  .object({ quantity: oneOf("What is measured", MEASURABLE_IDS) })
  .loose()
  .transform((reading, context) => {
    const parsed = readingOf(reading.quantity).safeParse(reading);
    if (parsed.success) return parsed.data;
    for (const issue of parsed.error.issues) context.addIssue({ ...issue });
    return z.NEVER;
  });
export type ReadingInput = z.output<typeof readingInput>;
