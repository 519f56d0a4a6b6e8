import type { Brew } from "@/lib/model/brew";
import { meterLog } from "@/lib/model/meter-readings";
import type { Preferences } from "@/lib/model/preferences";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { Quantity } from "@/lib/ui/quantity";
import { MeterForm } from "./meter-form";
import type { RecordReading } from "./use-delivery";

interface MeterSectionProps {
  readonly brew: Brew;
  readonly preferences: Preferences;
  readonly record: RecordReading;
}

/** The electricity meter, as it stood and as it stands. */
export function MeterSection({ brew, preferences, record }: MeterSectionProps) {
  const read = meterLog(brew);
  const mayRecord = brew.mayWrite && brew.state !== "closed";
  if (read.length === 0 && !mayRecord) return null;
  return (
    <section aria-labelledby="meter" className="mt-8">
      <h2 id="meter">Electricity meter</h2>
      <p className="text-muted">
        As it stands, at the start of the day and at its end; the comparison tells the difference. One that was set to
        zero stands at 0.
      </p>
      <ul className="my-1">
        {read.map(({ id, measured, at, actorName }) => (
          <li key={id}>
            <strong>
              <Quantity value={measured.value} dimension="energy" preferences={preferences} />
            </strong>{" "}
            <span className="text-sm text-muted">
              {actorName}, <ClockTime at={new Date(at)} withDay />
            </span>
          </li>
        ))}
      </ul>
      {read.length === 0 ? <p className="hidden print:block">Start: ____________ End: ____________</p> : null}
      {mayRecord ? <MeterForm brewId={brew.id} preferences={preferences} record={record} /> : null}
    </section>
  );
}
