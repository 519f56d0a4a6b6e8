"use client";

import { measuredOf } from "@/lib/ui/brew/measured-of";
import type { MeasuringPoint, WrittenReading } from "@/lib/ui/brew/reading-draft";
import { CELLAR_SERIES, cellarPoint } from "@/lib/ui/cellar/cellar-point";
import { ReadingForm } from "../reading-form";
import { eventOf } from "../use-log-entry";
import type { CellarPart } from "./cellar-part";

interface CellarReadingsProps extends Pick<CellarPart, "preferences" | "record"> {
  readonly brewId: string;
  readonly original: CellarPart["fermentation"]["original"];
}

/** Where readings of the fermenter are typed. */
export function CellarReadings({ brewId, original, preferences, record }: CellarReadingsProps) {
  const form = (quantity: (typeof CELLAR_SERIES)[number]) => (
    <ReadingForm
      key={quantity}
      brewId={brewId}
      name={quantity}
      point={cellarPoint(quantity, { original })}
      preferences={preferences}
      record={record}
      compose={messageOf}
    />
  );
  const [gravity, temperature, ...others] = CELLAR_SERIES;
  return (
    <section aria-labelledby="read" className="no-print">
      <h2 id="read">Read in the fermenter</h2>
      <div className="mt-2 flex flex-col gap-5">
        {form(gravity)}
        {form(temperature)}
        <details>
          <summary className="target">Pressure and pH</summary>
          <div className="mt-3 flex flex-col gap-5">{others.map(form)}</div>
        </details>
      </div>
    </section>
  );
}

function messageOf(brewId: string, point: MeasuringPoint, reading: WrittenReading) {
  return { events: [eventOf(brewId, measuredOf(point, reading), reading.occurredAt)] };
}
