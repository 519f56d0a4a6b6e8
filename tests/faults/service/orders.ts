import { inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { actionForm } from "../../support/action-form";
import { ask, returned } from "./ask";
import { NamedWrites, type NamedRow } from "./named-writes";
import type { Setting, Writer } from "./writer";

interface Orderer {
  readonly member: Member;
  readonly reference: string;
  readonly orderId: string;
}

/** Things asked for in one order: the thing, how much of it, and a line of the order's history. */
export function orderWriter(setting: Setting, { member, reference, orderId }: Orderer): Writer {
  const writes = new NamedWrites();
  const { spaceId, userId } = member;
  return {
    kind: "line of an order",
    write: () =>
      writes.write(async (name) => {
        const { headers } = setting.actionOf("app/s/[space]/orders/[order]/actions.ts", "addThingAction", null);
        // A form says by itself of what type it is.
        const { "content-type": _type, ...plain } = { ...headers };
        const reply = await ask(setting.origin, {
          ...{ path: `/s/${setting.slug}/orders/${orderId}`, method: "POST" },
          headers: { ...plain, ...setting.cookieOf(reference), origin: setting.origin },
          body: actionForm([setting.slug, orderId], { what: "other/pcs", name, amount: "1" }),
        });
        return returned(reply)?.status === "ok";
      }),
    judge: () =>
      writes.judge((names) =>
        inSpace(
          spaceId,
          userId,
          (tx) => tx.$queryRaw<NamedRow[]>`
            SELECT i.name, count(*)::int AS count, bool_and(EXISTS (
                SELECT FROM order_want w WHERE w.space_id = i.space_id AND w.round_id = i.round_id AND w.item_id = i.id)
              AND EXISTS (SELECT FROM order_event e
                WHERE e.space_id = i.space_id AND e.round_id = i.round_id AND e.text LIKE '%' || i.name || '%')) AS whole
            FROM order_item i
            WHERE i.space_id = ${spaceId}::uuid AND i.round_id = ${orderId}::uuid AND i.name = ANY (${names})
            GROUP BY i.name`,
        ),
      ),
  };
}
