import type { ReactNode } from "react";
import type { LateDifference, LateSide, OrderItem } from "@/lib/model/order/order";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "@/lib/ui/data-table";
import { Money } from "@/lib/ui/order/money";
import { OrderAmount } from "@/lib/ui/order/order-amount";
import { PackList } from "./pack-list";

interface LateDifferenceTableProps {
  readonly difference: LateDifference;
  readonly item: OrderItem;
  readonly currency: string;
  readonly preferences: Preferences;
}

interface Line {
  readonly label: string;
  readonly of: (side: LateSide) => ReactNode;
}

/** The item as it is locked, and as it would be: amount, packs, cost, and what each gets and pays. */
export function LateDifferenceTable({ difference, item, currency, preferences }: LateDifferenceTableProps) {
  const { before, after } = difference;
  const people = new Map([...before.parts, ...after.parts].map(({ userId, userName }) => [userId, userName]));
  const amount = (of: number) => <OrderAmount thing={item} amount={of} preferences={preferences} exact />;
  const lines: readonly Line[] = [
    { label: "Needed together", of: (side) => amount(side.amount) },
    {
      label: "Packs",
      of: ({ amount: needed, purchase }) => (
        <PackList item={{ ...item, amount: needed, purchase }} preferences={preferences} />
      ),
    },
    { label: "Cost", of: ({ purchase }) => <Money minor={purchase.cost} currency={currency} /> },
    ...[...people].map(([userId, name]): Line => {
      const partOf = ({ parts }: LateSide) => parts.find((part) => part.userId === userId);
      return {
        label: name,
        of: (side) => (
          <>
            {amount(partOf(side)?.amount ?? 0)} for <Money minor={partOf(side)?.cost ?? 0} currency={currency} />
          </>
        ),
      };
    }),
  ];
  return (
    <DataTable<Line>
      caption="What the late wish changes"
      captionHidden
      columns={[
        { id: "what", label: item.name, cell: ({ label }) => label },
        { id: "before", label: "As locked", isNumber: true, cell: ({ of }) => of(before) },
        { id: "after", label: "With the wish", isNumber: true, cell: ({ of }) => of(after) },
      ]}
      records={lines}
      keyOf={({ label }) => label}
    />
  );
}
