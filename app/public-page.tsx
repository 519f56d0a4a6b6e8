import Link from "next/link";
import { PageMain } from "@/lib/ui/page-main";

const STATIONS = ["Water", "Mash", "Lauter", "Kettle", "Stand and chill", "Fermenter", "Package"];

/** What somebody sees who is not signed in: what this is for and how to get in. */
export function PublicPage() {
  return (
    <PageMain narrow>
      <h1>One recipe, many kettles, one comparison</h1>
      <p className="mt-4 text-lg">
        Gylebook is a brewing club’s register of batches. A recipe is written once and computed anew for every member’s
        own kettle. The brew day is logged beside its prediction, and afterwards the club sees, station by station, what
        was planned and what came of it.
      </p>
      <ol className="mt-8 flex flex-wrap gap-x-3 border-y border-rule py-3 font-serif" aria-label="Stations of a brew">
        {STATIONS.map((station, i) => (
          <li key={station}>
            {station}
            {i < STATIONS.length - 1 ? (
              <span aria-hidden className="pl-3 text-muted">
                →
              </span>
            ) : null}
          </li>
        ))}
      </ol>
      <p className="mt-3 text-muted">
        Mass and extract are balanced at each of them. Every number says how it was computed, from which published
        source, and how sure it is.
      </p>
      <div className="mt-8 flex flex-wrap items-center gap-4">
        <Link href="/sign-in" className="button">
          Sign in
        </Link>
        <p className="text-muted">New here? A club’s organiser sends you an invitation link.</p>
      </div>
    </PageMain>
  );
}
