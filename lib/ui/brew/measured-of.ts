import type { Measured } from "@/lib/model/log/log-event";
import { loggedRange } from "@/lib/model/log/series";
import type { MeasuringPoint, WrittenReading } from "./reading-draft";

/** A reading as the log says it; `step` is where on the run sheet it was measured. */
export function measuredOf(
  { quantity }: MeasuringPoint,
  { value, sd, instrument, sampleC, note, entered }: WrittenReading,
  step: string | null = null,
): Measured {
  return { kind: loggedRange(quantity).kind, quantity, value, sd, instrument, sampleC, note, entered, step };
}
