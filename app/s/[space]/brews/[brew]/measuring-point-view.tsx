import Link from "next/link";
import type { Brew } from "@/lib/model/brew";
import type { Preferences } from "@/lib/model/preferences";
import type { Reading } from "@/lib/model/reading";
import { currentReadings } from "@/lib/model/current-readings";
import { ReadingLine } from "@/lib/ui/brew/reading-line";
import type { MeasuringPoint } from "@/lib/ui/brew/reading-draft";
import { Quantity } from "@/lib/ui/quantity";
import { ReadingForm } from "./reading-form";
import type { RecordReading } from "./use-delivery";

interface MeasuringPointViewProps {
  readonly home: string;
  readonly brew: Brew;
  readonly point: MeasuringPoint;
  readonly preferences: Preferences;
  /** The step, which tells two forms for one quantity apart. */
  readonly at: string;
  /** What this reading would decide, where it would decide most. */
  readonly asked: string | null;
  readonly record: RecordReading;
}

/** What to measure, what to expect, what was read already, and the place for the next reading. */
export function MeasuringPointView({ home, brew, point, preferences, at, asked, record }: MeasuringPointViewProps) {
  const readings = brew.readings.filter(({ quantity }) => quantity === point.quantity);
  const mayRecord = brew.mayWrite && brew.state !== "closed";
  return (
    <div className="mt-3 border-l-4 border-ink pl-3">
      <p>
        <strong>
          Measure
          <span className={mayRecord ? "hidden print:inline" : undefined}>: {point.label}</span>.
        </strong>{" "}
        {point.expected === null ? null : (
          <>
            Expect{" "}
            <Link href={`${home}/brews/${brew.id}/comparison?explain=${point.quantity}`} className="explained">
              <Quantity
                value={point.expected.value}
                interval={point.expected.interval}
                dimension={point.dimension}
                preferences={preferences}
              />
            </Link>
            .
          </>
        )}
      </p>
      {asked === null ? null : <p>{asked}</p>}
      <PointReadings readings={readings} point={point} preferences={preferences} />
      {mayRecord ? (
        <ReadingForm
          brewId={brew.id}
          point={point}
          preferences={preferences}
          name={`${at}-${point.quantity}`}
          record={record}
        />
      ) : null}
    </div>
  );
}

/** What was read here already; on paper, the place to write it. */
function PointReadings({
  readings,
  point,
  preferences,
}: Pick<MeasuringPointViewProps, "point" | "preferences"> & { readonly readings: readonly Reading[] }) {
  const [current] = currentReadings(readings).values();
  if (readings.length === 0) return <p className="hidden print:block">Read: ______________ at ________</p>;
  return (
    <ul className="my-1">
      {readings.map((reading) => (
        <ReadingLine
          key={reading.id}
          reading={reading}
          counts={reading === current}
          dimension={point.dimension}
          preferences={preferences}
        />
      ))}
    </ul>
  );
}
