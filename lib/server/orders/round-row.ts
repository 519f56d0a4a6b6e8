import "server-only";
import {
  ORDER_KINDS,
  ORDER_STATES,
  ORDER_UNITS,
  type OrderState,
  type OrderThing,
} from "@/lib/model/order/order-words";
import { AppError } from "../app-error";
import type { SpaceTransaction } from "../db";
import { storedWord } from "../stored-word";

const SHARED_BREW = { select: { id: true, title: true } } as const;

export const SUMMARY = { id: true, title: true, state: true, closesAt: true, sharedBrew: SHARED_BREW } as const;

/** Everything that is kept of an order; null where there is none. */
// eslint-disable-next-line @typescript-eslint/explicit-module-boundary-types -- the type is what Prisma makes of the query
export function findRound(tx: SpaceTransaction, spaceId: string, id: string) {
  return tx.orderRound.findUnique({
    where: { spaceId_id: { spaceId, id } },
    include: {
      sharedBrew: SHARED_BREW,
      items: {
        include: {
          offers: { orderBy: [{ size: "desc" }, { priceMinor: "asc" }, { id: "asc" }] },
          wants: true,
          shares: true,
          replaced: { orderBy: [{ proposedAt: "asc" }, { id: "asc" }] },
        },
      },
      lateWishes: { include: { item: { select: { name: true } } }, orderBy: [{ letAt: "desc" }, { id: "desc" }] },
      events: { orderBy: [{ at: "desc" }, { id: "desc" }] },
    },
  });
}

export type RoundRow = NonNullable<Awaited<ReturnType<typeof findRound>>>;
export type ItemRow = RoundRow["items"][number];

/** Takes the row of an order, so that whoever changes it next waits; "not found" where there is none. */
export async function holdRound(
  tx: SpaceTransaction,
  spaceId: string,
  id: string,
): Promise<{ state: OrderState; lockVersion: number }> {
  const rows = await tx.$queryRaw<{ state: string; lock_version: number }[]>`
    SELECT state, lock_version FROM order_round WHERE space_id = ${spaceId}::uuid AND id = ${id}::uuid FOR UPDATE`;
  const [row] = rows;
  if (row === undefined) throw new AppError("NOT_FOUND", "There is no such order here.");
  return { state: storedWord(ORDER_STATES, row.state), lockVersion: row.lock_version };
}

export function thingOf({ kind, name, unit }: Pick<ItemRow, "kind" | "name" | "unit">): OrderThing {
  return { kind: storedWord(ORDER_KINDS, kind), name, unit: storedWord(ORDER_UNITS, unit) };
}
