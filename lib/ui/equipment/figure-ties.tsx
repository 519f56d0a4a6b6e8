import type { ReactElement } from "react";
import type { FigureCorrelation } from "@/lib/calc/ledger";
import { EQUIPMENT_FIELDS } from "@/lib/model/equipment-fields";
import { Statistic } from "../across/statistic";
import { DataTable } from "../data-table";

/** Which figures of a profile were learned together, and how far one goes with the other; nothing where none were. */
export function FigureTies({ ties }: { readonly ties: readonly FigureCorrelation[] }): ReactElement | null {
  if (ties.length === 0) return null;
  const closestFirst = [...ties].sort((a, b) => Math.abs(b.coefficient) - Math.abs(a.coefficient));
  return (
    <details className="mt-8 max-w-xl">
      <summary className="cursor-pointer py-1">Which figures were learned together</summary>
      <p className="my-2 text-muted">
        From −1, where one is less by as much as the other is more, to 1. The intervals of a plan count with it, for as
        long as neither figure is set anew.
      </p>
      <DataTable<FigureCorrelation>
        caption="Figures that were learned together"
        columns={[
          { id: "one", label: "Figure", cell: ({ one }) => EQUIPMENT_FIELDS[one].label },
          { id: "other", label: "And figure", cell: ({ other }) => EQUIPMENT_FIELDS[other].label },
          {
            id: "coefficient",
            label: "Correlation of their errors",
            isNumber: true,
            cell: ({ coefficient }) => <Statistic value={coefficient} />,
          },
        ]}
        records={closestFirst}
        keyOf={({ one, other }) => `${one} ${other}`}
      />
    </details>
  );
}
