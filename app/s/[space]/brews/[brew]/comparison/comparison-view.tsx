"use client";

import { ExplanationPanel } from "@/lib/ui/explanation-panel";
import { LedgerTable } from "@/lib/ui/ledger-table";
import { CausesTable } from "./causes-table";
import { COMPARISON_COLUMNS, comparisonGroups, isComparisonColumn, isQuantityId } from "./comparison-columns";
import type { ExplainedTarget } from "./explained-target";
import { InWords } from "./in-words";
import { LossAccount } from "./loss-account";
import { SuspectList } from "./suspect-list";
import { ReconciledTable } from "./reconciled-table";
import type { Explained } from "./explained";
import { useExplanation } from "./use-explanation";

interface ComparisonViewProps extends Explained {
  /** The number whose explanation the address asks for. */
  readonly asked: ExplainedTarget | null;
}

/** The ledger comparison with the account of the extract; every number opens its explanation. */
export function ComparisonView({ asked, ...explained }: ComparisonViewProps) {
  const { brew, comparison, preferences } = explained;
  const { explanation, open, close } = useExplanation(explained, asked);

  function openCell(rowId: string, columnId: string): void {
    if (isQuantityId(rowId) && isComparisonColumn(columnId)) open({ kind: "quantity", id: rowId, column: columnId });
  }

  return (
    <>
      <SuspectList suspects={comparison.suspects} preferences={preferences} />
      <p className="my-4 text-muted">{summaryOf(explained)}</p>
      <InWords comparison={comparison} causes={explained.causes} preferences={preferences} />
      <LedgerTable
        caption={`Planned against measured: ${brew.title}, ${brew.brewerName}`}
        columns={COMPARISON_COLUMNS}
        groups={comparisonGroups(comparison)}
        preferences={preferences}
        onExplain={openCell}
      />
      <ReconciledTable comparison={comparison} preferences={preferences} onExplain={openCell} />
      <LossAccount
        account={comparison.extract}
        preferences={preferences}
        onExplain={({ id }, column) => open({ kind: "extract", id, column })}
      />
      <CausesTable
        causes={explained.causes}
        preferences={preferences}
        onExplain={(id, cause) => open({ kind: "cause", id, cause })}
      />
      <ExplanationPanel
        explanation={explanation}
        preferences={preferences}
        onClose={close}
        onFollow={(id) => open({ kind: "quantity", id, column: "planned" })}
      />
    </>
  );
}

function summaryOf({ brew, comparison }: Explained): string {
  const measured = comparison.rows.filter(({ expectation }) => expectation !== null);
  if (measured.length === 0) return "Nothing is measured yet. Readings are entered on the run sheet.";
  const outside = measured.filter(({ expectation }) => expectation === "outside").length;
  const counted = `${measured.length} of ${comparison.rows.length} numbers are known`;
  const verdict = outside === 0 ? "all of them inside the expectation" : `${outside} of them outside the expectation`;
  return `${counted} for ${brew.equipmentName}, ${verdict}. Inside means: no further from the plan than four of five such brews and readings would be.`;
}
