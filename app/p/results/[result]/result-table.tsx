"use client";

import { useState, type ReactElement } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { comparedRowOf, type ResultContent } from "@/lib/model/published-result";
import { AcrossTable, type AcrossTarget } from "@/lib/ui/across/across-table";
import { ExplanationPanel } from "@/lib/ui/explanation-panel";

interface ResultTableProps {
  readonly result: Pick<ResultContent, "columns" | "accounts">;
  readonly preferences: Preferences;
}

/** The published figures side by side; each opens its explanation. */
export function ResultTable({ result, preferences }: ResultTableProps): ReactElement {
  const [explanation, setExplanation] = useState<ExplainedNumber | null>(null);

  // The texts are fetched when the first one is asked for.
  async function open(target: AcrossTarget): Promise<void> {
    const { explainPublished } = await import("./explain-published");
    setExplanation(explainPublished(result, target, preferences));
  }

  return (
    <>
      <AcrossTable
        columns={result.columns.map((column) => ({
          key: column.name,
          name: column.name,
          heading: column.name,
          rowOf: (id) => comparedRowOf(column, id),
        }))}
        preferences={preferences}
        explained={(target, number) => (
          <button
            type="button"
            aria-haspopup="dialog"
            className={target.of === "measured" ? "explained font-semibold" : "explained"}
            onClick={() => void open(target)}
          >
            {number}
            <span className="sr-only">
              . Explain {QUANTITIES[target.id].label}, {target.of}, of {target.column}
            </span>
          </button>
        )}
      />
      <ExplanationPanel
        explanation={explanation}
        preferences={preferences}
        onClose={() => {
          setExplanation(null);
        }}
      />
    </>
  );
}
