import "server-only";
import type { SpaceTransaction } from "../db";

export interface LockedLot {
  readonly id: string;
  readonly ownerUserId: string | null;
  readonly kind: string;
  readonly label: string;
  readonly onHand: number;
  readonly lockVersion: number;
  readonly isArchived: boolean;
}

/**
 * Keeps everybody else from changing these lots until the transaction ends. They are locked in the order of their
 * identifiers, so that two brews that share lots wait for each other and never in a circle.
 */
export async function lockLots(
  tx: SpaceTransaction,
  spaceId: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, LockedLot>> {
  const wanted = [...new Set(ids)];
  await tx.$queryRaw`
    SELECT id FROM ingredient_lot WHERE space_id = ${spaceId}::uuid AND id = ANY (${wanted}::uuid[])
    ORDER BY id FOR UPDATE`;
  const rows = await tx.ingredientLot.findMany({
    where: { spaceId, id: { in: wanted } },
    select: { id: true, ownerUserId: true, kind: true, label: true, onHand: true, lockVersion: true, archivedAt: true },
  });
  return new Map(
    rows.map(({ archivedAt, onHand, ...row }) => [
      row.id,
      { ...row, onHand: onHand.toNumber(), isArchived: archivedAt !== null },
    ]),
  );
}
