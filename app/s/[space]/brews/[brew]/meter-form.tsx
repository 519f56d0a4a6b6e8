"use client";

import type { Preferences } from "@/lib/model/preferences";
import { measuredOf } from "@/lib/ui/brew/measured-of";
import type { MeasuringPoint, WrittenReading } from "@/lib/ui/brew/reading-draft";
import { seriesPoint } from "@/lib/ui/brew/series-point";
import { ReadingForm } from "./reading-form";
import type { RecordReading } from "./use-delivery";
import { eventOf } from "./use-log-entry";

interface MeterFormProps {
  readonly brewId: string;
  readonly preferences: Preferences;
  readonly record: RecordReading;
}

/** Where the electricity meter is typed, as it stands. */
export function MeterForm(props: MeterFormProps) {
  return <ReadingForm {...props} name="meter" point={seriesPoint("day.meter", null)} compose={messageOf} />;
}

function messageOf(brewId: string, point: MeasuringPoint, reading: WrittenReading) {
  return { events: [eventOf(brewId, measuredOf(point, reading), reading.occurredAt)] };
}
