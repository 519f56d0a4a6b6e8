import "server-only";
import { randomUUID } from "node:crypto";
import type { Archiving, IngredientChange, KeepOutcome, NewIngredient } from "@/lib/model/ingredient";
import { AppError } from "../app-error";
import { inSpace, isUniqueViolation, toJson, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";

export async function createIngredient(
  member: Member,
  { name, notes, what }: NewIngredient,
): Promise<{ readonly id: string }> {
  requireAbility(member, "write recipes");
  const { spaceId, userId } = member;
  const id = randomUUID();
  const figures = toJson(what.figures);
  await unlessNameTaken(name, () =>
    inSpace(spaceId, userId, (tx) =>
      tx.ingredient.create({ data: { spaceId, id, kind: what.kind, name, figures, notes, createdBy: userId } }),
    ),
  );
  return { id };
}

/** Changes an ingredient, if nobody changed it since it was read. Its kind stays: it would be another ingredient. */
export function saveIngredient(
  member: Member,
  { id, lockVersion, name, notes, what }: IngredientChange,
): Promise<KeepOutcome> {
  requireAbility(member, "write recipes");
  return unlessNameTaken(name, () =>
    inSpace(member.spaceId, member.userId, async (tx) => {
      const { kind } = await requireIngredient(tx, member, id);
      if (kind !== what.kind) throw new AppError("INVALID", `This ingredient is a ${kind} and stays one.`);
      return update(tx, member, { id, lockVersion, data: { name, notes, figures: toJson(what.figures) } });
    }),
  );
}

/** Puts an ingredient away, or takes it out again; recipes that name it are as they were. */
export function archiveIngredient(member: Member, { id, lockVersion, archived }: Archiving): Promise<KeepOutcome> {
  requireAbility(member, "write recipes");
  return unlessNameTaken(null, () =>
    inSpace(member.spaceId, member.userId, async (tx) => {
      await requireIngredient(tx, member, id);
      return update(tx, member, { id, lockVersion, data: { archivedAt: archived ? new Date() : null } });
    }),
  );
}

async function requireIngredient(tx: SpaceTransaction, { spaceId }: Member, id: string): Promise<{ kind: string }> {
  const row = await tx.ingredient.findUnique({ where: { spaceId_id: { spaceId, id } }, select: { kind: true } });
  if (row === null) throw new AppError("NOT_FOUND", "There is no such ingredient here.");
  return row;
}

type IngredientUpdate = Parameters<SpaceTransaction["ingredient"]["updateMany"]>[0]["data"];

async function update(
  tx: SpaceTransaction,
  { spaceId }: Member,
  { id, lockVersion, data }: { readonly id: string; readonly lockVersion: number; readonly data: IngredientUpdate },
): Promise<KeepOutcome> {
  // The version in the condition makes the second of two people change no row.
  const { count } = await tx.ingredient.updateMany({
    where: { spaceId, id, lockVersion },
    data: { ...data, lockVersion: { increment: 1 } },
  });
  return count === 1 ? { ok: true, lockVersion: lockVersion + 1 } : { ok: false, reason: "stale" };
}

async function unlessNameTaken<R>(name: string | null, write: () => Promise<R>): Promise<R> {
  try {
    return await write();
  } catch (error) {
    if (!isUniqueViolation(error)) throw error;
    const called = name === null ? "of this name" : `called ${name}`;
    throw new AppError("CONFLICT", `The club has an ingredient ${called} already.`, { cause: error });
  }
}
