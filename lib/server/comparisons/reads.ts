import "server-only";
import { BREW_STATES } from "@/lib/model/brew";
import { ASKED_QUANTITIES, COMPARED_AS, GROUPINGS } from "@/lib/model/summary/question";
import type { SavedComparison } from "@/lib/model/summary/saved-comparison";
import { displayNames } from "../accounts/names";
import { readSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { mayChangeComparison } from "./may-change";

interface Row {
  readonly id: string;
  readonly name: string;
  readonly quantity: string;
  readonly comparedAs: string;
  readonly groupBy: string;
  readonly recipeId: string | null;
  readonly sharedBrewId: string | null;
  readonly brewerUserId: string | null;
  readonly state: string | null;
  readonly fromDay: Date | null;
  readonly toDay: Date | null;
  readonly createdBy: string;
  readonly createdAt: Date;
  readonly lockVersion: number;
}

/** The comparisons that the club keeps, by name. */
export async function listComparisons(member: Member): Promise<readonly SavedComparison[]> {
  const { spaceId, userId } = member;
  const rows = await readSpace({ spaceId, userId }, (tx) =>
    tx.savedComparison.findMany({ where: { spaceId, deletedAt: null }, orderBy: [{ name: "asc" }, { id: "asc" }] }),
  );
  const nameOf = await displayNames(
    member,
    rows.map(({ createdBy }) => createdBy),
  );
  return rows.map((row) => toComparison(member, row, nameOf));
}

/** One of them; null where there is none, or it was taken away. */
export async function findComparison(member: Member, id: string): Promise<SavedComparison | null> {
  if (!isRecordId(id)) return null;
  const { spaceId, userId } = member;
  const row = await readSpace({ spaceId, userId }, (tx) =>
    tx.savedComparison.findUnique({ where: { spaceId_id: { spaceId, id }, deletedAt: null } }),
  );
  return row === null ? null : toComparison(member, row, await displayNames(member, [row.createdBy]));
}

function toComparison(member: Member, row: Row, nameOf: (userId: string) => string): SavedComparison {
  const dayOf = (day: Date | null): string | null => day?.toISOString().slice(0, 10) ?? null;
  return {
    id: row.id,
    name: row.name,
    question: {
      quantity: storedWord(ASKED_QUANTITIES, row.quantity),
      as: storedWord(COMPARED_AS, row.comparedAs),
      group: storedWord(GROUPINGS, row.groupBy),
      ...{ recipe: row.recipeId, sharedBrew: row.sharedBrewId, brewer: row.brewerUserId },
      state: row.state === null ? null : storedWord(BREW_STATES, row.state),
      ...{ from: dayOf(row.fromDay), to: dayOf(row.toDay) },
    },
    madeBy: nameOf(row.createdBy),
    createdAt: row.createdAt,
    lockVersion: row.lockVersion,
    mayChange: mayChangeComparison(member, row.createdBy),
  };
}
