import "server-only";
import { directory } from "../db";

/** Display names by user id. Content keeps ids only, because people are in the directory and may be elsewhere. */
export async function displayNames(userIds: readonly string[]): Promise<(userId: string) => string> {
  const rows = await directory.appUser.findMany({
    where: { id: { in: [...new Set(userIds)] } },
    select: { id: true, displayName: true },
  });
  const names = new Map(rows.map((row) => [row.id, row.displayName]));
  return (userId) => names.get(userId) ?? "a former member";
}
