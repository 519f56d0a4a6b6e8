import "server-only";
import type { ClosingClub } from "@/lib/model/account-closing";
import { directory, type DirectoryTransaction } from "../db";
import type { Viewer } from "../session";

/** Every club of somebody by its name, and what their leaving would do to it. */
export async function closingClubs(
  tx: Pick<DirectoryTransaction, "membership">,
  userId: string,
): Promise<readonly ClosingClub[]> {
  const memberships = await tx.membership.findMany({
    where: { userId, status: "active", space: { kind: "club", deletedAt: null } },
    select: {
      role: true,
      space: {
        select: {
          slug: true,
          name: true,
          memberships: { where: { status: "active", userId: { not: userId } }, select: { role: true } },
        },
      },
    },
    orderBy: { space: { name: "asc" } },
  });
  return memberships.map(({ role, space: { slug, name, memberships: others } }) => {
    const isLast = role === "organiser" && !others.some((other) => other.role === "organiser");
    return { slug, name, outcome: others.length === 0 ? "goes too" : isLast ? "needs an organiser" : "goes on" };
  });
}

export function listClosingClubs({ userId }: Viewer): Promise<readonly ClosingClub[]> {
  return closingClubs(directory, userId);
}
