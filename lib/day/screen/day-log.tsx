import type { ReactElement } from "react";
import { QUANTITIES } from "@/lib/calc/ledger";
import { isSeries, SERIES, type LoggedQuantity } from "@/lib/model/log/series";
import type { LoggedReading } from "@/lib/model/log/logged-readings";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { measuringPoint } from "@/lib/ui/brew/measuring-points";
import type { MeasuringPoint } from "@/lib/ui/brew/reading-draft";
import { seriesPoint } from "@/lib/ui/brew/series-point";
import { Quantity } from "@/lib/ui/quantity";
import { useDay, type Day } from "./day-context";
import type { OnEnter } from "./entry-bar";
import { LogOthers } from "./log-others";
import { RefusedEntries } from "./refused-entries";

/** Everything that was read and written, the latest first, each with where it is kept; what was corrected stays. */
export function DayLog({ onEnter }: { readonly onEnter: OnEnter }): ReactElement {
  const { log } = useDay();
  const readings = [...log.readings].reverse();
  return (
    <section aria-labelledby="day-log">
      <h2 id="day-log">Log</h2>
      <RefusedEntries />
      {readings.length === 0 ? <p className="mt-2 text-muted">No reading yet.</p> : null}
      <ul className="list-ruled mt-2">
        {readings.map((reading) => (
          <ReadingItem key={reading.id} reading={reading} onEnter={onEnter} />
        ))}
      </ul>
      <LogOthers />
    </section>
  );
}

function ReadingItem({
  reading,
  onEnter,
}: {
  readonly reading: LoggedReading;
  readonly onEnter: OnEnter;
}): ReactElement {
  const day = useDay();
  const { measured, at, actorName, isVoid, voidedWhy, contested, history } = reading;
  const { label, dimension } = named(measured.quantity);
  const earlier = history.filter((version) => version.measured !== null && version.measured !== measured);
  const value = <Quantity value={measured.value} dimension={dimension} preferences={day.preferences} />;
  return (
    <li className="py-2">
      <p>
        {label} {isVoid ? <s>{value}</s> : <strong>{value}</strong>}{" "}
        <span className="text-sm text-muted">
          <ClockTime at={new Date(at)} />, {actorName}, {measured.instrument}, “{measured.entered}”
          {measured.note === "" ? "" : `. “${measured.note}”`}
        </span>
      </p>
      {isVoid ? <p className="text-sm">Does not count{voidedWhy === "" ? "" : `: ${voidedWhy}`}.</p> : null}
      {earlier.map((version) => (
        <p key={version.id} className="text-sm text-muted">
          <span className="sr-only">Before: </span>
          <s>
            <Quantity value={version.measured?.value ?? null} dimension={dimension} preferences={day.preferences} />
          </s>{" "}
          {version.actorName}
        </p>
      ))}
      {contested ? (
        <p className="notice notice-attention text-sm">
          Two people corrected this without seeing each other’s value; the later one stands. Correct it once more to
          settle it.
        </p>
      ) : null}
      <Standing reading={reading} label={label} onEnter={onEnter} />
    </li>
  );
}

/** Where it is kept, and what can be done about it. */
function Standing({
  reading,
  label,
  onEnter,
}: {
  readonly reading: LoggedReading;
  readonly label: string;
  readonly onEnter: OnEnter;
}): ReactElement {
  const day = useDay();
  const { measured, receivedAt, isVoid } = reading;
  return (
    <p className="flex flex-wrap items-center gap-x-4 text-sm">
      <span>{receivedAt === null ? "On this device only" : "On the server"}</span>
      {day.mayWrite ? (
        <>
          <button
            type="button"
            className="button-link"
            onClick={() =>
              onEnter({
                kind: "reading",
                point: pointOf(measured.quantity, day),
                step: measured.step,
                target: reading,
              })
            }
          >
            Correct<span className="sr-only"> {label}</span>
          </button>
          {isVoid ? null : (
            <button type="button" className="button-link" onClick={() => onEnter({ kind: "void", target: reading })}>
              Does not count<span className="sr-only"> {label}</span>
            </button>
          )}
        </>
      ) : null}
    </p>
  );
}

function named(quantity: LoggedQuantity): Pick<MeasuringPoint, "label" | "dimension"> {
  return isSeries(quantity) ? SERIES[quantity] : QUANTITIES[quantity];
}

function pointOf(quantity: LoggedQuantity, { plan }: Day): MeasuringPoint {
  return isSeries(quantity) ? seriesPoint(quantity, null) : measuringPoint(quantity, plan);
}
