import Link from "next/link";
import { trialDay, type TrialLine } from "@/lib/model/trial/trial";
import { BeginTrialForm, type BeginTrial } from "./begin-trial-form";

interface TrialSectionProps {
  readonly space: string;
  readonly equipmentId: string;
  readonly trials: readonly TrialLine[];
  /** Begins a trial; null for those who only look. */
  readonly begin: BeginTrial | null;
}

/** The water-only trials of a kettle, and the way to begin one. */
export function TrialSection({ space, equipmentId, trials, begin }: TrialSectionProps) {
  if (begin === null && trials.length === 0) return null;
  return (
    <section aria-labelledby="trials" className="mb-8">
      <h2 id="trials" className="mb-2">
        Commissioning
      </h2>
      <p className="mb-3">
        A trial with plain water measures what the profile only estimates: power, losses, boil-off, what stays behind,
        chiller and volume marks.
      </p>
      {trials.length === 0 ? null : (
        <ul className="mb-3">
          {trials.map(({ id, begunAt, entryCount, acceptedRev }) => (
            <li key={id}>
              <Link href={`/s/${space}/equipment/${equipmentId}/trials/${id}`} className="target">
                Trial of {trialDay(begunAt)}
              </Link>
              , {entryCount} {entryCount === 1 ? "entry" : "entries"}
              {acceptedRev === null ? "" : `, figures taken in revision ${String(acceptedRev)}`}
            </li>
          ))}
        </ul>
      )}
      {begin === null ? null : <BeginTrialForm begin={begin} />}
    </section>
  );
}
