import type { Agreement } from "@/lib/model/tasting/results-scored";
import { Statistic } from "@/lib/ui/across/statistic";
import { ExplainedCall } from "@/lib/ui/explained-call";

/** How far the judges agree, in words and numbers. */
export function AgreementLines({ agreement }: { readonly agreement: Agreement | null }) {
  if (agreement === null) {
    return (
      <p className="mt-2">
        Agreement is told from judges who handed in a sheet of every entry; fewer than two did, or there is one entry
        only.
      </p>
    );
  }
  const { judges, entries, concordance, intraclass, scores } = agreement;
  return (
    <>
      <p className="mt-2">
        Of the {judges} judges who tasted all {entries} entries:
      </p>
      <ul className="list-disc ps-5">
        <li>
          {concordance.ok ? (
            <>
              Order: Kendall’s W is <Statistic value={concordance.w} />, where 0 is no common order and 1 the same order
              in all. By chance alone they would agree as much with probability{" "}
              <Statistic value={concordance.p} kind="probability" />
              {entries < 7 ? ", roughly, for so few entries" : ""}.
            </>
          ) : (
            "Order: every judge gave all entries the same points, so there is no order to agree on."
          )}
        </li>
        <li>
          {intraclass.ok ? (
            <>
              Points: <Statistic value={intraclass.icc} /> of the scatter of single scores is differences between
              entries (intraclass correlation, with 80 % between{" "}
              {intraclass.low === null ? "nothing" : <Statistic value={intraclass.low} />} and{" "}
              <Statistic value={intraclass.high} />
              ); the rest is judges and chance.
            </>
          ) : intraclass.reason === "no-scatter" ? (
            "Points: the judges leave no scatter, so there is nothing to compare the entries with."
          ) : (
            "Points: the entries differ by no more than chance, so no share of the scatter is theirs."
          )}
        </li>
      </ul>
      <ExplainedCall id="judging/kendallW" args={[scores]} />
      <ExplainedCall id="judging/intraclassCorrelation" args={[{ scores, form: "2,1", confidence: 0.8 }]} />
    </>
  );
}
