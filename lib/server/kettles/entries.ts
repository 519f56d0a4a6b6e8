import "server-only";
import type { KettleEntry } from "@/lib/model/kettle-entry";
import { roleMay } from "@/lib/model/roles";
import { displayNames } from "../accounts/names";
import { keptOf } from "../adaptations/choose";
import { listAdaptations } from "../adaptations/reads";
import { inSpace } from "../db";
import { mayChangeEquipment } from "../equipment/may-change";
import type { Member } from "../session";
import { listPeople } from "../spaces/reads";

/** Every kettle of the space with what was chosen for it, and every member who could have one and described none. */
export async function listKettleEntries(
  member: Member,
  revision: { readonly recipeId: string; readonly rev: number },
): Promise<readonly KettleEntry[]> {
  const { spaceId, userId } = member;
  const [heads, kept, people] = await Promise.all([
    inSpace(spaceId, userId, (tx) =>
      tx.equipment.findMany({ where: { spaceId }, select: { id: true, ownerUserId: true, name: true } }),
    ),
    listAdaptations(member, revision),
    listPeople(member),
  ]);
  const nameOf = await displayNames(
    member,
    heads.map(({ ownerUserId }) => ownerUserId),
  );
  const kettles = heads.map(({ id, ownerUserId, name }): KettleEntry => {
    const choice = kept.get(id);
    return {
      key: id,
      ownerId: ownerUserId,
      ownerName: nameOf(ownerUserId),
      kettleName: name,
      mayChoose: mayChangeEquipment(member, ownerUserId),
      kept: choice === undefined ? null : keptOf(choice),
    };
  });
  const owners = new Set(heads.map(({ ownerUserId }) => ownerUserId));
  const without = people
    .filter((person) => roleMay(person.role, "keep equipment") && !owners.has(person.userId))
    .map((person): KettleEntry => {
      const { userId: key, displayName } = person;
      return { key, ownerId: key, ownerName: displayName, kettleName: null, mayChoose: false, kept: null };
    });
  return [...kettles, ...without];
}
