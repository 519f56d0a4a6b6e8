import "server-only";
import type { Ledger } from "@/lib/calc/ledger";
import { recipeIntention } from "@/lib/model/recipe-intention";
import type { PlanVersion, SharedBrew } from "@/lib/model/shared-brew";
import { findRevision } from "@/lib/server/recipes/reads";
import type { Member } from "@/lib/server/session";

export interface News {
  readonly seen: PlanVersion;
  readonly ledgers: { readonly before: Ledger; readonly after: Ledger } | null;
  readonly notes: readonly string[];
}

/** What the member has not seen of the plan; null for somebody who has seen it all, or takes no part. */
export async function readNews(
  member: Member,
  { plan, participants }: SharedBrew,
  versions: readonly PlanVersion[],
): Promise<News | null> {
  const own = participants.filter(({ userId }) => userId === member.userId);
  const seenVersion = Math.min(...own.map((part) => part.seenVersion));
  const seen = versions.find(({ version }) => version === seenVersion);
  if (seen === undefined || seenVersion >= plan.version) return null;
  const [before, after] = await Promise.all([ledgerOf(member, seen), ledgerOf(member, plan)]);
  const isSame = seen.recipeRev === plan.recipeRev;
  const notes = versions.filter(({ version, note }) => version > seenVersion && note !== "").map(({ note }) => note);
  return { seen, notes, ledgers: isSame || before === null || after === null ? null : { before, after } };
}

async function ledgerOf(member: Member, { recipeId, recipeRev }: PlanVersion): Promise<Ledger | null> {
  const revision = await findRevision(member, recipeId, recipeRev);
  return revision === null ? null : (recipeIntention(revision.content)?.ledger ?? null);
}
