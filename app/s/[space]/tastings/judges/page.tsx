import type { Metadata } from "next";
import Link from "next/link";
import { dayInWords } from "@/lib/model/plain-day";
import type { Preferences } from "@/lib/model/preferences";
import { judgeInterval } from "@/lib/model/tasting/judge-interval";
import { listJudgedFlights, type JudgedFlight } from "@/lib/server/tastings/results-history";
import { requireMember } from "@/lib/server/session";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

export const metadata: Metadata = { title: "Judges over time" };

interface JudgesPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

/** How judges scored in the tastings so far; each sees the own line alone, an organiser all. */
export default async function JudgesPage({ params }: JudgesPageProps) {
  const { space } = await params;
  const member = await requireMember(space);
  const flights = await listJudgedFlights(member);
  const judges = [...new Map(flights.map(({ judgeId, name }) => [judgeId, name]))].sort(([, a], [, b]) =>
    a.localeCompare(b, "en"),
  );
  return (
    <>
      <h1>Judges over time</h1>
      <p className="mt-2 max-w-3xl">
        Severity is points below the average judge of that flight, with its 80 % interval; spread is the standard
        deviation of the judge’s scores, beside that of the entries. One flight tells little: look for what stays.
      </p>
      {judges.length === 0 ? <p className="mt-4">No tasting with sheets of yours has been revealed yet.</p> : null}
      {judges.map(([judgeId, name]) => (
        <section key={judgeId} aria-labelledby={`judge-${judgeId}`} className="mt-6">
          <h2 id={`judge-${judgeId}`}>{name}</h2>
          <DataTable
            caption={`Tastings judged by ${name}`}
            captionHidden
            columns={columnsOf(`/s/${space}`, member.preferences)}
            records={flights.filter((flight) => flight.judgeId === judgeId)}
            keyOf={({ tastingId, flightTitle }) => `${tastingId} ${flightTitle}`}
          />
        </section>
      ))}
    </>
  );
}

function columnsOf(home: string, preferences: Preferences): readonly DataColumn<JudgedFlight>[] {
  const reason = "cannot be told from the sheets of this flight";
  const points = { dimension: "points", preferences, aligned: true, reason } as const;
  return [
    {
      ...{ id: "tasting", label: "Tasting" },
      cell: ({ tastingId, tastingTitle, flightTitle, heldOn }) => (
        <>
          <Link className="target" href={`${home}/tastings/${tastingId}/results`}>
            {tastingTitle}
          </Link>
          <span className="block text-muted">
            {flightTitle}
            {heldOn === null ? "" : `, ${dayInWords(heldOn)}`}
          </span>
        </>
      ),
    },
    {
      ...{ id: "severity", label: "Severity", isNumber: true },
      cell: ({ effect, df }) => (
        <Quantity
          {...points}
          value={effect?.severity ?? null}
          interval={effect === null ? null : judgeInterval(effect, df)}
        />
      ),
    },
    {
      ...{ id: "spread", label: "Spread", isNumber: true },
      cell: ({ effect }) => <Quantity {...points} value={effect?.spread ?? null} />,
    },
    {
      ...{ id: "expected", label: "Spread of the entries", isNumber: true },
      cell: ({ effect }) => <Quantity {...points} value={effect?.expectedSpread ?? null} />,
    },
    { id: "sheets", label: "Sheets", isNumber: true, cell: ({ handedIn }) => handedIn },
  ];
}
