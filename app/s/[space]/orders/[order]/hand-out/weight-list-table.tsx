import type { Preferences } from "@/lib/model/preferences";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { OrderAmount } from "@/lib/ui/order/order-amount";
import type { OrderAction } from "../order-action";
import { StockForm } from "./stock-form";
import { WeighForm } from "./weigh-form";
import type { WeightList, Weighing } from "./weight-lists";

interface WeightListTableProps {
  readonly list: WeightList;
  readonly preferences: Preferences;
  /** null for those who only read, and before everything came. */
  readonly action: OrderAction | null;
  /** Takes what was weighed out into the reader's stock; null in the lists of others. */
  readonly stockAction: OrderAction | null;
}

/** What one member gets, with a place for each weight; on paper a block that is not torn apart. */
export function WeightListTable({ list, preferences, action, stockAction }: WeightListTableProps) {
  const columns: readonly DataColumn<Weighing>[] = [
    { id: "item", label: "Item", cell: ({ item }) => item.name },
    {
      id: "weight",
      label: "To weigh out",
      isNumber: true,
      cell: ({ item, amount }) => <OrderAmount thing={item} amount={amount} preferences={preferences} exact />,
    },
    {
      id: "handed",
      label: "Weighed out",
      cell: (weighing) => <Handed weighing={weighing} preferences={preferences} action={action} />,
    },
    ...(stockAction === null
      ? []
      : [
          {
            id: "stock",
            label: "My stock",
            isAction: true,
            cell: (weighing: Weighing) => <StockForm weighing={weighing} action={stockAction} />,
          },
        ]),
  ];
  const heading = `list-${list.userId}`;
  return (
    <section aria-labelledby={heading} className="weight-list mt-8">
      <h2 id={heading} className="mb-2">
        {list.name}
      </h2>
      <DataTable
        caption={`What ${list.name} gets`}
        captionHidden
        columns={columns}
        records={list.weighings}
        keyOf={({ item }) => item.id}
      />
    </section>
  );
}

function Handed(props: {
  readonly weighing: Weighing;
  readonly preferences: Preferences;
  readonly action: OrderAction | null;
}) {
  const { weighing, preferences, action } = props;
  const { item, share, amount } = weighing;
  if (share.handed !== null) {
    return (
      <>
        <span aria-hidden>✓ </span>
        <OrderAmount thing={item} amount={share.handed.amount} preferences={preferences} exact />, by{" "}
        {share.handed.byName}, <Day at={share.handed.at} /> <ClockTime at={share.handed.at} />
        {action === null || share.lotId !== null ? null : (
          <WeighForm {...{ item, share, amount, preferences, action }} isUndo />
        )}
      </>
    );
  }
  return (
    <>
      <span className="print-only">______________ ☐</span>
      {action === null ? (
        <span className="no-print text-muted">{amount === 0 ? "nothing came" : "not yet"}</span>
      ) : (
        <WeighForm {...{ item, share, amount, preferences, action }} />
      )}
    </>
  );
}
