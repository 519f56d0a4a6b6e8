import Link from "next/link";
import type { IngredientLot } from "@/lib/model/ingredient-lot";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "@/lib/ui/data-table";
import { amountText } from "@/lib/ui/ingredient/amount-text";
import { BestBefore } from "./best-before";

interface LotTableProps {
  readonly home: string;
  readonly lots: readonly IngredientLot[];
  readonly today: string;
  readonly preferences: Preferences;
}

/** The lots of one ingredient. */
export function LotTable({ home, lots, today, preferences }: LotTableProps) {
  return (
    <DataTable<IngredientLot>
      caption="Lots"
      captionHidden
      columns={[
        {
          id: "label",
          label: "Lot",
          cell: ({ id, label }) => (
            <Link href={`${home}/lots/${id}`} className="target">
              {label}
            </Link>
          ),
        },
        { id: "whose", label: "Whose", cell: ({ owner }) => owner?.name ?? "the club" },
        {
          id: "onHand",
          label: "On hand",
          isNumber: true,
          cell: ({ onHand, what }) => amountText(onHand, what.kind, preferences),
        },
        {
          id: "bestBefore",
          label: "Best before",
          cell: ({ bestBefore }) =>
            bestBefore === null ? "not stated" : <BestBefore day={bestBefore} today={today} />,
        },
      ]}
      records={lots}
      keyOf={({ id }) => id}
    />
  );
}
