import { randomUUID } from "node:crypto";
import { inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { actionForm } from "../../support/action-form";
import { ask, returned } from "./ask";
import type { Setting, Verdict, Writer } from "./writer";

interface Orderer {
  readonly member: Member;
  readonly reference: string;
  readonly orderId: string;
}

/** Things asked for in one order, each tried once under a name of its own: the thing, how much, and a line of history. */
export function orderWriter(setting: Setting, { member, reference, orderId }: Orderer): Writer {
  const tried: string[] = [];
  const acknowledged = new Set<string>();
  return {
    kind: "line of an order",
    write: async () => {
      const name = `Tried ${randomUUID()}`;
      tried.push(name);
      const { method, headers } = setting.actionOf("app/s/[space]/orders/[order]/actions.ts", "addThingAction", null);
      // A form says by itself of what type it is.
      const { "content-type": _type, ...plain } = { ...headers };
      const reply = await ask(setting.origin, {
        ...{ path: `/s/${setting.slug}/orders/${orderId}`, method: method ?? "POST" },
        headers: { ...plain, ...setting.cookieOf(reference), origin: setting.origin },
        body: actionForm([setting.slug, orderId], { what: "other/pcs", name, amount: "1" }),
      });
      const isKept = returned(reply)?.status === "ok";
      if (isKept) acknowledged.add(name);
      return isKept;
    },
    judge: async (): Promise<Verdict> => {
      const { spaceId, userId } = member;
      const rows = await inSpace(
        spaceId,
        userId,
        (tx) => tx.$queryRaw<{ name: string; count: number; whole: boolean }[]>`
          SELECT i.name, count(*)::int AS count, bool_and(EXISTS (
              SELECT FROM order_want w WHERE w.space_id = i.space_id AND w.round_id = i.round_id AND w.item_id = i.id)
            AND EXISTS (SELECT FROM order_event e
              WHERE e.space_id = i.space_id AND e.round_id = i.round_id AND e.text LIKE '%' || i.name || '%')) AS whole
          FROM order_item i
          WHERE i.space_id = ${spaceId}::uuid AND i.round_id = ${orderId}::uuid AND i.name = ANY (${tried})
          GROUP BY i.name`,
      );
      const there = new Set(rows.map(({ name }) => name));
      return {
        acknowledged: acknowledged.size,
        lost: [...acknowledged].filter((name) => !there.has(name)).length,
        doubled: rows.filter(({ count }) => count > 1).length,
        halfWritten: rows.filter(({ whole }) => !whole).length,
      };
    },
  };
}
