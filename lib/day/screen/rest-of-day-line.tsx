import type { ReactElement } from "react";
import type { Replan } from "@/lib/calc/runsheet";
import { Quantity } from "@/lib/ui/quantity";
import { AboutTime } from "./about-time";
import { useDay } from "./day-context";

const WORTH_SAYING_MIN = 3;

/** How late or early the day runs and what that means for the rest of it. */
export function RestOfDayLine(): ReactElement | null {
  const { day } = useDay();
  const { replan, startedAt } = day;
  if (replan === null || startedAt === null) return null;
  return (
    <section aria-labelledby="rest-of-day">
      <h2 id="rest-of-day">The rest of the day</h2>
      {replan.ok ? <Outlook replan={replan} startedAt={startedAt} /> : <NoOutlook replan={replan} />}
    </section>
  );
}

type Outcome = Extract<Replan, { readonly ok: true }>;

function Outlook({ replan, startedAt }: { readonly replan: Outcome; readonly startedAt: number }): ReactElement {
  const { behindMin, pitch, end, missed, heatingPace } = replan;
  return (
    <>
      <p className="mt-2">
        <strong>{behind(behindMin)}</strong>{" "}
        {pitch === null ? null : (
          <>
            Pitch <AboutTime startedAt={startedAt} time={pitch} />.{" "}
          </>
        )}
        All done <AboutTime startedAt={startedAt} time={end} />.
      </p>
      {Math.abs(heatingPace - 1) < 0.03 ? null : (
        <p className="text-muted">
          Heating takes {String(Math.round(Math.abs(heatingPace - 1) * 100))} % {heatingPace > 1 ? "longer" : "less"}{" "}
          than on the sheet today, and the ramps to come are planned so.
        </p>
      )}
      {missed.map(({ step, names, possible }) => (
        <p key={step} className="notice notice-attention mt-2">
          {names.join(", ")} should be in by now.{" "}
          {possible
            ? "It can still go in, for less bitterness."
            : "What it belongs to is over; leave it out or note why."}
        </p>
      ))}
    </>
  );
}

function NoOutlook({ replan }: { readonly replan: Exclude<Replan, { readonly ok: true }> }): ReactElement {
  const { preferences } = useDay();
  if (replan.reason === "no-such-step")
    return <p>The sheet and the log do not fit together; the times are as planned.</p>;
  return (
    <p className="notice notice-attention mt-2">
      The temperature does not rise:{" "}
      <Quantity value={replan.celsius} dimension="temperature" preferences={preferences} /> at the last reading. Look at
      the heater’s setting, its switch and the residual-current device; do not open or touch anything electrical with
      wet hands.
    </p>
  );
}

function behind(minutes: number): string {
  const whole = Math.round(Math.abs(minutes));
  if (whole < WORTH_SAYING_MIN) return "On time.";
  return `${String(whole)} minutes ${minutes > 0 ? "late" : "early"}.`;
}
