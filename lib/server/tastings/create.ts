import "server-only";
import { randomInt, randomUUID } from "node:crypto";
import { startOfDay } from "@/lib/model/plain-day";
import { roleMay, ROLES } from "@/lib/model/roles";
import type { DraftSeen, NewTasting, TastingChange } from "@/lib/model/tasting/prepare";
import { AppError } from "../app-error";
import { directory, inSpace, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { inDraft } from "./draft";

const MOST_SEED = 2_147_483_647;

/** Begins a tasting. Whoever is its steward knows everything to the end, and nobody else does. */
export async function createTasting(member: Member, input: NewTasting): Promise<{ readonly id: string }> {
  requireAbility(member, "prepare tastings");
  const { spaceId, userId } = member;
  const { title, note, stewardId, sharedBrewId, heldOn } = input;
  await requireSteward(spaceId, stewardId);
  const id = randomUUID();
  await inSpace(spaceId, userId, async (tx) => {
    if (sharedBrewId !== null) await requireSharedBrew(tx, spaceId, sharedBrewId);
    await tx.tasting.create({
      data: {
        ...{ spaceId, id, title, note, stewardId, sharedBrewId, createdBy: userId },
        heldOn: dayOrNull(heldOn),
        seed: randomInt(MOST_SEED),
      },
    });
  });
  return { id };
}

/** What the tasting is called, when it is, and what everybody is told of it. */
export function changeTasting(member: Member, { title, heldOn, note, ...seen }: TastingChange): Promise<void> {
  const { spaceId } = member;
  return inDraft(member, seen, async (tx) => {
    await tx.tasting.update({
      where: { spaceId_id: { spaceId, id: seen.id } },
      data: { title, note, heldOn: dayOrNull(heldOn) },
    });
  });
}

/** Draws other orders of serving, which nobody chooses. */
export function redrawOrders(member: Member, seen: DraftSeen): Promise<void> {
  const { spaceId } = member;
  return inDraft(member, seen, async (tx) => {
    await tx.tasting.update({
      where: { spaceId_id: { spaceId, id: seen.id } },
      data: { seed: randomInt(MOST_SEED) },
    });
  });
}

/** Throws away a draft, on which nobody relies yet. */
export function discardTasting(member: Member, seen: DraftSeen): Promise<void> {
  const { spaceId } = member;
  return inDraft(member, seen, async (tx) => {
    const within = { spaceId, tastingId: seen.id };
    await tx.tastingEntry.deleteMany({ where: within });
    await tx.tastingPanel.deleteMany({ where: within });
    await tx.tastingFlight.deleteMany({ where: within });
    await tx.tasting.delete({ where: { spaceId_id: { spaceId, id: seen.id } } });
  });
}

const dayOrNull = (day: string | null): Date | null => (day === null ? null : startOfDay(day));

async function requireSteward(spaceId: string, userId: string): Promise<void> {
  const found = await directory.membership.findFirst({
    where: { spaceId, userId, status: "active" },
    select: { role: true },
  });
  if (found === null) throw new AppError("NOT_FOUND", "There is no such member here.");
  if (!roleMay(storedWord(ROLES, found.role), "prepare tastings")) {
    throw new AppError("INVALID", "Steward: choose a steward or an organiser of the club.");
  }
}

async function requireSharedBrew(tx: SpaceTransaction, spaceId: string, id: string): Promise<void> {
  const found = await tx.sharedBrew.findUnique({ where: { spaceId_id: { spaceId, id } }, select: { id: true } });
  if (found === null) throw new AppError("NOT_FOUND", "There is no such shared brew here.");
}
