"use client";

import { useMemo, type ReactElement } from "react";
import { QUANTITIES, QUANTITY_IDS, STATIONS } from "@/lib/calc/ledger";
import type { LedgerGroup } from "../ledger-rows";
import { LedgerTable } from "../ledger-table";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { LiveBalance } from "./live-balance";
import { LiveValue } from "./live-value";
import { STATION_INPUTS } from "./station-inputs";
import { useEditorValue } from "./use-editor-value";

/** Station by station: what goes in, what it is then, and that nothing got lost unseen. */
export function RecipeTable({ kettleName }: { readonly kettleName: string }): ReactElement {
  const { preferences, isReadOnly } = useEditor();
  const present = useEditorValue(presentQuantities);
  const groups = useMemo(() => groupsOf(present), [present]);
  return (
    <div className={isReadOnly ? "ledger-beside ledger-read fields-dense" : "ledger-beside fields-dense"}>
      <h2 className="sr-only">Station by station</h2>
      <LedgerTable
        caption={`Ledger of the recipe on ${kettleName}, station by station`}
        columns={[{ id: "kettle", label: kettleName }]}
        groups={groups}
        preferences={preferences}
      />
    </div>
  );
}

/** Which rows the table has; its numbers follow each for itself. */
function presentQuantities({ shown }: EditorState): string {
  if (shown === null) return "";
  const { quantities } = shown.brewed.ledger;
  return QUANTITY_IDS.filter((id) => quantities[id] !== null).join(" ");
}

function groupsOf(present: string): readonly LedgerGroup[] {
  const ids = new Set(present.split(" "));
  const groups = STATIONS.map((station) => ({
    station,
    children: STATION_INPUTS[station],
    balanceContent: present === "" ? undefined : <LiveBalance station={station} />,
    rows: QUANTITY_IDS.filter((id) => QUANTITIES[id].station === station && ids.has(id)).map((id) => ({
      id,
      label: QUANTITIES[id].label,
      dimension: QUANTITIES[id].dimension,
      cells: [{ value: null, content: <LiveValue id={id} /> }],
    })),
  }));
  return groups.filter(({ rows, children }) => rows.length > 0 || children !== undefined);
}
