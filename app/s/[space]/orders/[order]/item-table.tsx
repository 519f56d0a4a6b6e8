import Link from "next/link";
import type { Order, OrderItem } from "@/lib/model/order/order";
import type { MemberTotal } from "@/lib/model/order/order-totals";
import type { Preferences } from "@/lib/model/preferences";
import { EmptyState } from "@/lib/ui/empty-state";
import { Money } from "@/lib/ui/order/money";
import { OrderAmount } from "@/lib/ui/order/order-amount";
import { PackList } from "./pack-list";

interface ItemTableProps {
  readonly home: string;
  readonly order: Order;
  readonly totals: readonly MemberTotal[];
  readonly preferences: Preferences;
}

/** The order as a ledger: a row for each item, a column for each member, then total, packs and cost. */
export function ItemTable({ home, order, totals, preferences }: ItemTableProps) {
  if (order.items.length === 0) {
    return <EmptyState>No sheet needs anything yet, and nobody wants anything beside it.</EmptyState>;
  }
  const rowProps = { home, order, totals, preferences };
  return (
    <div className="across-frame">
      <table role="table" className="data-table order-table">
        <caption className="sr-only">Items of the order, by member, with packs and cost</caption>
        <thead role="rowgroup">
          <tr role="row">
            <Heading label="Item" />
            {totals.map(({ userId, name }) => (
              <Heading key={userId} label={name} isMember />
            ))}
            <Heading label="Total" isNumber />
            <Heading label="Packs" />
            <Heading label="Cost" isNumber />
          </tr>
        </thead>
        <tbody role="rowgroup">
          {order.items.map((item) => (
            <ItemRow key={item.id} item={item} {...rowProps} />
          ))}
        </tbody>
        <tfoot role="rowgroup">
          <tr role="row">
            <th role="rowheader" scope="row">
              To pay
            </th>
            {totals.map(({ userId, name, cost }) => (
              <td key={userId} role="cell" className="is-number order-member">
                <Label text={name} />
                <Money minor={cost} currency={order.currency} />
              </td>
            ))}
            <td role="cell" className="is-number" colSpan={3}>
              <Label text="Together" />
              <Money minor={totals.reduce((sum, { cost }) => sum + cost, 0)} currency={order.currency} />
            </td>
          </tr>
        </tfoot>
      </table>
    </div>
  );
}

function Heading(props: { readonly label: string; readonly isNumber?: boolean; readonly isMember?: boolean }) {
  const { label, isNumber = false, isMember = false } = props;
  const classes = [isNumber || isMember ? "is-number" : "", isMember ? "order-member" : ""].join(" ").trim();
  return (
    <th role="columnheader" scope="col" className={classes}>
      {label}
    </th>
  );
}

function Label({ text }: { readonly text: string }) {
  return (
    <span aria-hidden className="narrow-label">
      {text}
    </span>
  );
}

function ItemRow({ item, home, order, totals, preferences }: ItemTableProps & { readonly item: OrderItem }) {
  return (
    <tr role="row">
      <th role="rowheader" scope="row">
        <Link href={`${home}/orders/${order.id}/items/${item.id}`} className="target">
          {item.name}
        </Link>
      </th>
      {totals.map(({ userId, name }) => {
        const amount = item.shares.find((share) => share.userId === userId)?.amount ?? 0;
        return (
          <td
            key={userId}
            role="cell"
            className={amount === 0 ? "is-number order-member is-empty" : "is-number order-member"}
          >
            <Label text={name} />
            {amount === 0 ? "" : <OrderAmount thing={item} amount={amount} preferences={preferences} />}
          </td>
        );
      })}
      <td role="cell" className="is-number">
        <Label text="Total" />
        <OrderAmount thing={item} amount={item.amount} preferences={preferences} />
      </td>
      <td role="cell">
        <Label text="Packs" />
        <PackList item={item} preferences={preferences} />
      </td>
      <td role="cell" className="is-number">
        <Label text="Cost" />
        <Money minor={item.paid ?? item.purchase?.cost ?? null} currency={order.currency} />
      </td>
    </tr>
  );
}
