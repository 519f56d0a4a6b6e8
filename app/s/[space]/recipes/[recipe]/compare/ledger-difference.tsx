"use client";

import { useMemo } from "react";
import { differenceIntervals, intervals } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { ExplanationPanel } from "@/lib/ui/explanation-panel";
import { LedgerTable } from "@/lib/ui/ledger-table";
import { Notice } from "@/lib/ui/notice";
import { compute } from "@/lib/ui/recipe/compute";
import type { ComparedText } from "./compared-text";
import { differenceColumns, differenceGroups } from "./difference-groups";
import { differenceSummary } from "./difference-summary";
import { useExplanation } from "./use-explanation";

interface LedgerDifferenceProps {
  readonly before: ComparedText;
  readonly after: ComparedText;
  readonly preferences: Preferences;
}

/** What the changes do to the beer: both ledgers and their difference, each number with its interval and explanation. */
export function LedgerDifference(props: LedgerDifferenceProps) {
  const { before, after } = props;
  const one = useMemo(() => compute(before.recipe, before.equipment, before.ambient), [before]);
  const other = useMemo(() => compute(after.recipe, after.equipment, after.ambient), [after]);
  return (
    <section aria-labelledby="beer" className="mt-10">
      <h2 id="beer" className="mb-3">
        In the beer
      </h2>
      {before.kettleName === after.kettleName ? null : (
        <Notice>
          {before.name} is written on {before.kettleName}, {after.name} on {after.kettleName}: the difference below is
          of recipe and kettle together.
        </Notice>
      )}
      {one.ok && other.ok ? (
        <ComparedLedgers {...props} one={one.brewed} other={other.brewed} />
      ) : (
        <Notice kind="attention">
          There is no comparison: {[one, other].flatMap((side) => (side.ok ? [] : [side.why])).join("; ")}.
        </Notice>
      )}
    </section>
  );
}

type Brewed = Extract<ReturnType<typeof compute>, { ok: true }>["brewed"];

interface ComparedLedgersProps extends LedgerDifferenceProps {
  readonly one: Brewed;
  readonly other: Brewed;
}

function ComparedLedgers({ before, after, one, other, preferences }: ComparedLedgersProps) {
  const compared = useMemo(
    () => ({
      one,
      other,
      before: intervals(one),
      after: intervals(other),
      apart: differenceIntervals({ before: one, after: other }),
    }),
    [one, other],
  );
  const { explanation, open, close, follow } = useExplanation(compared, preferences);
  return (
    <>
      <p className="mb-4">{differenceSummary(compared, after.name, preferences)}</p>
      <LedgerTable
        caption={`${before.name} and ${after.name}, and their difference`}
        columns={differenceColumns(before.name, after.name)}
        groups={differenceGroups(compared, preferences)}
        preferences={preferences}
        onExplain={open}
      />
      <ExplanationPanel explanation={explanation} preferences={preferences} onClose={close} onFollow={follow} />
    </>
  );
}
