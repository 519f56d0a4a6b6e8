import { QUANTITIES } from "@/lib/calc/ledger";
import type { PreviewedFigure } from "@/lib/model/exchange/preview";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

interface FigureTableProps {
  readonly figures: readonly PreviewedFigure[];
  readonly preferences: Preferences;
}

/** What the file says of its beer beside what this book computes of the same recipe. */
export function FigureTable({ figures, preferences }: FigureTableProps) {
  return (
    <DataTable
      caption="The file's own figures and this book's"
      columns={[
        { id: "figure", label: "Figure", cell: ({ id }) => QUANTITIES[id].label },
        {
          id: "stated",
          label: "In the file",
          isNumber: true,
          cell: ({ id, stated }) => (
            <Quantity value={stated} dimension={QUANTITIES[id].dimension} preferences={preferences} />
          ),
        },
        {
          id: "computed",
          label: "Computed here",
          isNumber: true,
          cell: ({ id, computed }) => (
            <Quantity
              value={computed}
              dimension={QUANTITIES[id].dimension}
              preferences={preferences}
              reason="no wort comes of this recipe on this kettle"
            />
          ),
        },
        {
          id: "difference",
          label: "Difference",
          isNumber: true,
          cell: ({ id, computed, stated }) => (
            <Quantity
              value={computed}
              differenceFrom={stated}
              dimension={QUANTITIES[id].dimension}
              preferences={preferences}
              reason="no wort comes of this recipe on this kettle"
            />
          ),
        },
      ]}
      records={figures}
      keyOf={({ id }) => id}
    />
  );
}
