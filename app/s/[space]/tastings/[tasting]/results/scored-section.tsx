import type { Preferences } from "@/lib/model/preferences";
import type { ScoredResult } from "@/lib/model/tasting/results-scored";
import { ForestPlot } from "@/lib/ui/across/forest-plot";
import { ExplainedCall } from "@/lib/ui/explained-call";
import { AgreementLines } from "./agreement-lines";
import { EntryTable } from "./entry-table";
import { JudgeTable } from "./judge-table";

interface ScoredSectionProps {
  readonly result: ScoredResult;
  readonly seed: number;
  readonly home: string;
  readonly ownId: string;
  readonly preferences: Preferences;
}

/** How the entries of a scored flight did, and how far the judges can be trusted. */
export function ScoredSection({ result, seed, home, ownId, preferences }: ScoredSectionProps) {
  const { flight, adjustment, table } = result;
  const id = `flight-${String(flight.flightNo)}`;
  return (
    <section aria-labelledby={id} className="mt-8">
      <h2 id={id}>{flight.title}</h2>
      {adjustment === null ? (
        <p className="mt-2">Nobody handed in a sheet, so there is no result.</p>
      ) : (
        <>
          <Cautions result={result} />
          <EntryTable result={result} home={home} preferences={preferences} />
          <ExplainedCall id="judging/adjustForJudge" args={[{ scores: table.scores, seed }]} />
          <EntryForest result={result} />
          <h3 className="mt-6">Agreement</h3>
          <AgreementLines agreement={result.agreement} />
          <h3 className="mt-6">Judges</h3>
          <JudgeTable result={result} ownId={ownId} preferences={preferences} />
        </>
      )}
    </section>
  );
}

/** What keeps these results from being better than they are. */
function Cautions({ result }: { readonly result: ScoredResult }) {
  const { flight, missing, adjustment, table } = result;
  const { begun } = flight;
  const nobody = flight.entries.length - table.entryNos.length;
  return (
    <ul className="mt-2 list-disc ps-5">
      {missing === 0 ? null : (
        <li>
          {missing} of {flight.served.length} sheets are missing
          {begun.length === 0 ? "" : `, of which ${String(begun.length)} were begun and not handed in`}. The adjusted
          means allow for who tasted what; they are less sure for it.
        </li>
      )}
      {nobody === 0 ? null : <li>{nobody} entries have no sheet at all and no rank.</li>}
      {adjustment?.ok !== false ? null : adjustment.reason === "disconnected" ? (
        <li>
          <strong>The entries fall into {adjustment.groups.length} groups that share no judge.</strong> A high mean in
          one may be a mild judge, so entries of different groups cannot be compared and none has a rank:{" "}
          {adjustment.groups
            .map(({ entries }) => entries.map((entry) => table.entryNos[entry]).join(", "))
            .filter((numbers) => numbers !== "")
            .join("; ")}
          .
        </li>
      ) : (
        <li>
          <strong>So few sheets leave nothing to tell chance by.</strong> There are means and ranks, and no intervals.
        </li>
      )}
    </ul>
  );
}

function EntryForest({ result }: { readonly result: ScoredResult }) {
  const rows = result.entries.flatMap(({ entry, adjusted }) =>
    adjusted === null
      ? []
      : [
          {
            id: String(entry.entryNo),
            name: `${String(entry.entryNo)} ${entry.beer}`,
            ...{ value: adjusted.adjusted, low: adjusted.low80, high: adjusted.high80 },
            planned: null,
            isStray: false,
          },
        ],
  );
  if (rows.length < 2) return null;
  return (
    <div className="mt-6">
      <ForestPlot
        title="Adjusted means"
        description="Each entry with its 80 % interval, the best first. The table has the numbers."
        unit="points of 50"
        rows={rows}
        mean={null}
      />
    </div>
  );
}
