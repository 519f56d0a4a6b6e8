import Link from "next/link";
import type { Order } from "@/lib/model/order/order";
import { Day } from "@/lib/ui/day";
import { ORDER_STATE_WORDS } from "@/lib/ui/order/order-state-words";

interface OrderHeadingProps {
  readonly home: string;
  readonly order: Order;
}

/** What the order is for, where it is, and the ways on from here. */
export function OrderHeading({ home, order }: OrderHeadingProps) {
  const { id, title, state, sharedBrew, closesAt, note } = order;
  const isShared = state !== "open" && state !== "cancelled";
  return (
    <>
      <h1>{title}</h1>
      <p className="text-muted">
        {sharedBrew === null ? (
          "What members want, for no shared brew"
        ) : (
          <>
            For <Link href={`${home}/shared-brews/${sharedBrew.id}`}>{sharedBrew.title}</Link>
          </>
        )}
        {closesAt === null ? null : (
          <>
            ; closes on <Day at={closesAt} />
          </>
        )}
        .
      </p>
      {note === "" ? null : <p className="mt-2">{note}</p>}
      <p className="mt-2" role="status">
        <strong>{ORDER_STATE_WORDS[state]}</strong>
      </p>
      <p className="no-print mt-2 flex flex-wrap gap-x-6">
        {isShared ? (
          <Link className="target" href={`${home}/orders/${id}/hand-out`}>
            Weight list
          </Link>
        ) : null}
        <a className="target" href={`${home}/orders/${id}/csv`} download>
          Table as CSV
        </a>
        {sharedBrew === null ? null : (
          <a className="target" href={`${home}/orders/${id}/csv?of=sheets`} download>
            Needs of the sheets as CSV
          </a>
        )}
      </p>
    </>
  );
}
