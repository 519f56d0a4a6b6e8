import { listOrderers } from "@/lib/server/orders/people";
import type { Order } from "@/lib/model/order/order";
import type { Member } from "@/lib/server/session";
import { Notice } from "@/lib/ui/notice";
import { decideLateAction, letLateAction } from "./late-actions";
import { LateWishEntry } from "./late-wish-entry";
import { LetLateForm } from "./let-late-form";

interface LateSectionProps {
  readonly member: Member;
  readonly order: Order;
}

/** Wishes in an order that is locked already: who may, what waits, and what it would change. */
export async function LateSection({ member, order }: LateSectionProps) {
  const { spaceSlug, userId, preferences } = member;
  const waiting = order.lateWishes.filter(({ state }) => state === "let" || state === "wished");
  if (order.state !== "locked" || (waiting.length === 0 && !order.mayOrganise)) return null;
  const mine = waiting.find((each) => each.userId === userId);
  return (
    <section aria-labelledby="late" className="no-print mt-10">
      <h2 id="late" className="mb-2">
        Late wishes
      </h2>
      {mine === undefined ? null : (
        <Notice kind="attention">
          {mine.letByName} lets you change one wish: open the item in the table above and ask there.
        </Notice>
      )}
      <ul className="list-ruled">
        {waiting.map((late) => (
          <LateWishEntry
            key={late.id}
            {...{ late, order, preferences }}
            action={order.mayOrganise ? decideLateAction.bind(null, spaceSlug, order.id) : null}
          />
        ))}
      </ul>
      {order.mayOrganise ? (
        <LetLateForm people={await listOrderers(member)} action={letLateAction.bind(null, spaceSlug, order.id)} />
      ) : null}
    </section>
  );
}
