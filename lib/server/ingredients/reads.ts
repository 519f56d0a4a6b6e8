import "server-only";
import type { ClubIngredient } from "@/lib/model/ingredient";
import { kindAndFigures } from "@/lib/model/ingredient";
import { roleMay } from "@/lib/model/roles";
import { displayNames } from "../accounts/names";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";

/** The club's own ingredients by kind and name, those put away too. */
export function listIngredients(member: Member): Promise<readonly ClubIngredient[]> {
  return read(member, null);
}

export async function findIngredient(member: Member, id: string): Promise<ClubIngredient | null> {
  if (!isRecordId(id)) return null;
  const [found] = await read(member, id);
  return found ?? null;
}

async function read(member: Member, id: string | null): Promise<readonly ClubIngredient[]> {
  const { spaceId, userId } = member;
  const rows = await inSpace(spaceId, userId, (tx) =>
    tx.ingredient.findMany({
      where: { spaceId, ...(id === null ? {} : { id }) },
      orderBy: [{ kind: "asc" }, { name: "asc" }, { id: "asc" }],
    }),
  );
  const nameOf = await displayNames(
    member,
    rows.map((row) => row.createdBy),
  );
  const mayWrite = roleMay(member.role, "write recipes");
  return rows.map(({ id: rowId, kind, name, figures, notes, lockVersion, createdBy, archivedAt }) => ({
    id: rowId,
    name,
    what: kindAndFigures.parse({ kind, figures }),
    notes,
    lockVersion,
    isArchived: archivedAt !== null,
    createdByName: nameOf(createdBy),
    mayWrite,
  }));
}
