import "server-only";
import { randomUUID } from "node:crypto";
import type { NewSubstitution, OrderOutcome, SubstitutionDecision } from "@/lib/model/order/order-input";
import { roleMay } from "@/lib/model/roles";
import { AppError } from "../app-error";
import { isUniqueViolation } from "../db";
import type { Member } from "../session";
import { keepItem, noteEvent, requireItem, requireOrder, whileIn } from "./within-order";
import { requirePerson } from "./writes";

/** Proposes one item in place of another: an organiser for anybody, a member for themselves. */
export async function proposeSubstitution(member: Member, proposal: NewSubstitution): Promise<{ readonly id: string }> {
  const { orderId, userId, ratio } = proposal;
  const order = await requireOrder(member, orderId);
  if (userId !== member.userId && !roleMay(member.role, "organise")) {
    throw new AppError("FORBIDDEN", "Only an organiser proposes this to somebody else.");
  }
  const [from, to] = [requireItem(order, proposal.fromItemId), requireItem(order, proposal.toItemId)];
  if (from.unit !== to.unit) {
    throw new AppError("INVALID", `Replacement: ${to.name} is counted in ${to.unit}, ${from.name} in ${from.unit}.`);
  }
  const name = await requirePerson(member, userId);
  const id = randomUUID();
  const { spaceId } = member;
  try {
    await whileIn(member, { orderId, state: "open" }, async (tx) => {
      const fromItemId = await keepItem(tx, member, { orderId, thing: from });
      const toItemId = await keepItem(tx, member, { orderId, thing: to });
      await tx.orderSubstitution.create({
        data: { spaceId, roundId: orderId, id, userId, fromItemId, toItemId, ratio, proposedBy: member.userId },
      });
      await noteEvent(tx, member, { orderId, text: `proposed ${to.name} in place of ${from.name} for ${name}` });
    });
  } catch (error) {
    if (!isUniqueViolation(error)) throw error;
    throw new AppError("CONFLICT", `${name} has a replacement for ${from.name} already.`, { cause: error });
  }
  return { id };
}

/** Agrees to a substitution or declines it, as long as the order is open. Only whose beer it is may. */
export async function decideSubstitution(member: Member, decision: SubstitutionDecision): Promise<OrderOutcome> {
  const { orderId, id, lockVersion, state } = decision;
  const order = await requireOrder(member, orderId);
  const asked = order.substitutions.find((each) => each.id === id);
  if (asked === undefined) throw new AppError("NOT_FOUND", "There is no such proposal in this order.");
  if (asked.userId !== member.userId) {
    throw new AppError("FORBIDDEN", `Only ${asked.userName} agrees to this: it is their beer.`);
  }
  return whileIn(member, { orderId, state: "open" }, async (tx): Promise<OrderOutcome> => {
    const { count } = await tx.orderSubstitution.updateMany({
      where: { spaceId: member.spaceId, roundId: orderId, id, lockVersion, state: { not: "declined" } },
      data: { state, decidedBy: member.userId, decidedAt: new Date(), lockVersion: { increment: 1 } },
    });
    if (count !== 1) return { ok: false, reason: "stale" };
    await noteEvent(tx, member, { orderId, text: `${state} ${asked.to.name} in place of ${asked.from.name}` });
    return { ok: true };
  });
}
