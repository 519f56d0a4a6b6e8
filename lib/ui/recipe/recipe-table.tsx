"use client";

import { useMemo, type ReactElement } from "react";
import type { Intervals } from "@/lib/calc/ledger";
import { ledgerGroups } from "../ledger-groups";
import { LedgerTable } from "../ledger-table";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { rowResults } from "./row-results";
import { stationInputs } from "./station-inputs";

/** Station by station: what goes in, what it is then, and that nothing got lost unseen. */
export function RecipeTable(props: {
  readonly editor: EditorState;
  readonly intervals: Intervals;
  readonly kettleName: string;
}): ReactElement {
  const { editor, intervals, kettleName } = props;
  const { preferences, isReadOnly, explain } = useEditor();
  const { draft, reading, shown } = editor;
  const ledger = shown?.brewed.ledger ?? null;
  const results = useMemo(() => rowResults(shown), [shown]);
  const groups = ledgerGroups({
    columns: ledger === null ? [] : [{ quantities: ledger.quantities, intervals }],
    balances: ledger?.balances,
    children: stationInputs({ draft, problems: reading.problems, results }),
  });
  return (
    <div className={isReadOnly ? "ledger-beside ledger-read fields-dense" : "ledger-beside fields-dense"}>
      <h2 className="sr-only">Station by station</h2>
      <LedgerTable
        caption={`Ledger of the recipe on ${kettleName}, station by station`}
        columns={[{ id: "kettle", label: kettleName }]}
        groups={groups}
        preferences={preferences}
        onExplain={explain}
      />
    </div>
  );
}
