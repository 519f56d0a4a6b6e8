import type { ReactElement } from "react";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { brewNames, type ComparisonAnswer } from "@/lib/model/summary/answer";
import type { BrewAmongOthers } from "@/lib/model/summary/compared-brew";
import { resultPage } from "@/lib/model/summary/result-page";
import { ExplainedCall } from "../explained-call";
import { PageLinks } from "../page-links";
import { AccountsSideBySide } from "./accounts-side-by-side";
import { AgainstPlan } from "./against-plan";
import { ComparedForest } from "./compared-forest";
import { comparedScale } from "./compared-scale";
import { CurveMultiples } from "./curve-multiples";
import { Findings } from "./findings";
import { GroupTable } from "./group-table";
import { PairSection } from "./pair-section";
import { PartitionSection } from "./partition-section";
import { ResultsTable } from "./results-table";
import { StrayLine } from "./stray-line";

/** An explanation opens the call; its inputs are those of the first brew, so a few brews show how it comes about. */
const EXPLAINED = 40;

interface ComparisonViewProps {
  readonly home: string;
  /** The page's own address without its question. */
  readonly path: string;
  /** What the address asks, as it was asked. */
  readonly asked: Readonly<Record<string, string>>;
  readonly answer: ComparisonAnswer;
  readonly brews: readonly BrewAmongOthers[];
  readonly preferences: Preferences;
}

/** Brews held against each other: what the numbers prove, plots, tables, and two brews of one's choice. */
export function ComparisonView(props: ComparisonViewProps): ReactElement {
  const { home, path, asked, answer, brews, preferences } = props;
  const { question, measured, compared, partition } = answer;
  const { label, dimension } = QUANTITIES[question.quantity];
  if (compared === null) return <p className="mt-4">{`Nobody has measured it: ${label}.`}</p>;
  const scale = comparedScale(question.as, dimension, preferences);
  const base = measured.reduce((sum, { figure }) => sum + figure.planned, 0) / measured.length;
  const strays = new Set(compared.outliers.ok ? compared.outliers.stray.map(({ id }) => id) : []);
  const { order, page, pages, rows, drawn } = resultPage(measured, asked);
  const hrefOf = (change: object): string => `${path}?${new URLSearchParams({ ...asked, ...change }).toString()}`;
  const nameOf = brewNames(brews);
  const shown = { scale, base, preferences };
  return (
    <>
      <section aria-labelledby="findings" className="mt-8">
        <h2 id="findings">{label}</h2>
        <div className="mt-2 max-w-3xl">
          <Findings compared={compared} {...shown} />
          <StrayLine outliers={compared.outliers} nameOf={(id) => nameIn(brews, id, nameOf)} />
          <ExplainedCall id="compare/compareBrews" args={[{ brews: argumentsOf(answer), as: question.as }]} />
        </div>
      </section>
      <ComparedForest {...{ rows, compared, strays, label }} {...shown} />
      <ResultsTable {...{ home, rows, strays, order, preferences }} hrefOf={(next) => hrefOf({ ...next, page: "1" })} />
      <PageLinks label="Pages of brews" page={page} pages={pages} hrefOf={(next) => hrefOf({ page: String(next) })} />
      <Unmeasured answer={answer} />
      <AgainstPlan {...{ measured, compared, label, dimension, preferences }} />
      <GroupTable by={question.group} grouped={compared.grouped} {...shown} />
      <PartitionSection partition={partition} {...shown} />
      <PairSection
        {...{ nameOf, preferences }}
        brews={measured.map(({ brew }) => brew)}
        first={asked["first"] ?? null}
        second={asked["second"] ?? null}
        kept={Object.fromEntries(Object.entries(asked).filter(([name]) => name !== "first" && name !== "second"))}
      />
      <AccountsSideBySide brews={rows} {...{ home, preferences }} />
      <section aria-labelledby="curves" className="mt-10">
        <h2 id="curves">Curves</h2>
        <Curves rows={drawn} preferences={preferences} />
      </section>
    </>
  );
}

function Curves({
  rows,
  preferences,
}: {
  readonly rows: ComparisonAnswer["measured"];
  readonly preferences: Preferences;
}) {
  const hasAny = rows.some(({ brew }) => brew.curves.length > 0);
  if (!hasAny) return <p className="mt-1">No temperature and no gravity was logged over time.</p>;
  return (
    <>
      {(["fermenter.gravity", "fermenter.temperature", "kettle.temperature"] as const).map((series) => (
        <CurveMultiples key={series} series={series} brews={rows} preferences={preferences} />
      ))}
    </>
  );
}

function Unmeasured({ answer: { unmeasured, pending } }: { readonly answer: ComparisonAnswer }) {
  return (
    <>
      {unmeasured.length === 0 ? null : (
        <p className="mt-3 text-muted">Planned and not measured: {unmeasured.map(({ name }) => name).join("; ")}.</p>
      )}
      {pending.length === 0 ? null : (
        <p className="mt-3" role="status">
          {pending.length} brews are being worked out and are not among these; load the page again in a minute.
        </p>
      )}
    </>
  );
}

function nameIn(brews: readonly BrewAmongOthers[], id: string, nameOf: (brew: BrewAmongOthers) => string): string {
  const brew = brews.find((each) => each.id === id);
  return brew === undefined ? "a brew" : nameOf(brew);
}

function argumentsOf({ measured }: ComparisonAnswer): readonly object[] {
  return measured.slice(0, EXPLAINED).map(({ brew, figure }) => ({
    ...{ id: brew.id, group: brew.brewerName, planned: figure.planned },
    ...{ measured: figure.measured ?? 0, sd: figure.measuredSd ?? 1 },
  }));
}
