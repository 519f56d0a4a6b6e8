import "server-only";
import type { ComparisonEnd, ComparisonRename, NewComparison } from "@/lib/model/summary/saved-comparison";
import { AppError } from "../app-error";
import { inSpace, isUniqueViolation, type SpaceTransaction } from "../db";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { mayChangeComparison } from "./may-change";

const CHANGED = "Somebody changed this comparison since the page was opened; load it again.";
const toDate = (day: string | null): Date | null => (day === null ? null : new Date(`${day}T00:00:00Z`));

/** Keeps a question under a name. Asked for twice by one page, it is kept once. */
export async function saveComparison(member: Member, input: NewComparison): Promise<{ readonly id: string }> {
  requireAbility(member, "brew");
  const { spaceId, userId } = member;
  const { id, name, quantity, as, group, recipe, sharedBrew, brewer, state, from, to } = input;
  try {
    await inSpace(spaceId, userId, async (tx) => {
      await requireNamed(tx, spaceId, input);
      await tx.savedComparison.create({
        data: {
          ...{ spaceId, id, name, quantity, comparedAs: as, groupBy: group, state },
          ...{ recipeId: recipe, sharedBrewId: sharedBrew, brewerUserId: brewer },
          ...{ fromDay: toDate(from), toDay: toDate(to), createdBy: userId },
        },
      });
    });
  } catch (error) {
    if (!isUniqueViolation(error)) throw error;
  }
  return { id };
}

/** What a question names has to be of this club. */
async function requireNamed(
  tx: SpaceTransaction,
  spaceId: string,
  { recipe, sharedBrew }: Pick<NewComparison, "recipe" | "sharedBrew">,
): Promise<void> {
  const [recipes, sharedBrews] = [
    recipe === null ? 1 : await tx.recipe.count({ where: { spaceId, id: recipe } }),
    sharedBrew === null ? 1 : await tx.sharedBrew.count({ where: { spaceId, id: sharedBrew } }),
  ];
  if (recipes === 0) throw new AppError("NOT_FOUND", "There is no such recipe here.");
  if (sharedBrews === 0) throw new AppError("NOT_FOUND", "There is no such shared brew here.");
}

export function renameComparison(member: Member, { name, ...which }: ComparisonRename): Promise<void> {
  return change(member, which, { name });
}

/** Takes a comparison away. Its row stays and says by whom. */
export function deleteComparison(member: Member, which: ComparisonEnd): Promise<void> {
  return change(member, which, { deletedAt: new Date(), deletedBy: member.userId });
}

function change(member: Member, { id, lockVersion }: ComparisonEnd, data: object): Promise<void> {
  const { spaceId, userId } = member;
  return inSpace(spaceId, userId, async (tx) => {
    const row = await tx.savedComparison.findUnique({
      where: { spaceId_id: { spaceId, id }, deletedAt: null },
      select: { createdBy: true },
    });
    if (row === null) throw new AppError("NOT_FOUND", "There is no such comparison here.");
    if (!mayChangeComparison(member, row.createdBy)) {
      throw new AppError("FORBIDDEN", "Only who keeps this comparison and organisers change it.");
    }
    const { count } = await tx.savedComparison.updateMany({
      where: { spaceId, id, lockVersion, deletedAt: null },
      data: { ...data, lockVersion: { increment: 1 } },
    });
    if (count !== 1) throw new AppError("CONFLICT", CHANGED);
  });
}
