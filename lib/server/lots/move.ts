import "server-only";
import type { KeepOutcome } from "@/lib/model/ingredient";
import { LOT_UNIT, type HandMovement, type LotMove } from "@/lib/model/ingredient-lot";
import { INGREDIENT_KINDS } from "@/lib/model/ingredient-kinds";
import { toThousandth } from "@/lib/model/lot-need";
import { ON_HAND_FIELDS } from "@/lib/model/ingredient-fields";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { mayChangeLot } from "./may-change";

/** Counts a lot anew, or notes what came or went; refused where somebody changed the lot since it was read. */
export function moveLot(member: Member, { id, lockVersion, kind, amount, why }: LotMove): Promise<KeepOutcome> {
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx): Promise<KeepOutcome> => {
    const lot = await tx.ingredientLot.findUnique({
      where: { spaceId_id: { spaceId, id } },
      select: { ownerUserId: true, kind: true, onHand: true, lockVersion: true },
    });
    if (lot === null) throw new AppError("NOT_FOUND", "There is no such lot here.");
    if (!mayChangeLot(member, lot.ownerUserId)) {
      throw new AppError("FORBIDDEN", "Only who keeps this lot or an organiser changes it.");
    }
    if (lot.lockVersion !== lockVersion) return { ok: false, reason: "stale" };
    const ingredientKind = storedWord(INGREDIENT_KINDS, lot.kind);
    const before = lot.onHand.toNumber();
    const after = toThousandth(amountAfter(kind, before, amount));
    requirePossible(after, {
      before,
      amount,
      kind,
      unit: LOT_UNIT[ingredientKind],
      most: ON_HAND_FIELDS[ingredientKind].max,
    });

    const { count } = await tx.ingredientLot.updateMany({
      where: { spaceId, id, lockVersion },
      data: { onHand: after, lockVersion: { increment: 1 } },
    });
    if (count !== 1) return { ok: false, reason: "stale" };
    const version = lockVersion + 1;
    const change = toThousandth(after - before);
    await tx.ingredientLotMovement.create({
      data: { spaceId, lotId: id, version, kind, change, after, why, actorId: userId },
    });
    return { ok: true, lockVersion: version };
  });
}

function amountAfter(kind: HandMovement, before: number, amount: number): number {
  if (kind === "counted") return amount;
  return kind === "bought" || kind === "received" ? before + amount : before - amount;
}

function requirePossible(
  after: number,
  a: { before: number; amount: number; kind: HandMovement; unit: string; most: number },
): void {
  const { before, amount, kind, unit, most } = a;
  if (after < 0) {
    throw new AppError(
      "INVALID",
      `Amount ${String(amount)} ${unit} ${kind} is more than the ${String(before)} ${unit} on hand.`,
    );
  }
  if (after > most) {
    throw new AppError("INVALID", `Amount: ${String(after)} ${unit} on hand is outside 0 to ${String(most)} ${unit}.`);
  }
}
