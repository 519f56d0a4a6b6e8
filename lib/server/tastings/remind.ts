import "server-only";
import { REMIND_AGAIN_MINUTES, reminderNote } from "@/lib/model/tasting/reminder";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import { tell } from "../notices/writes";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { countSheets, inStewardsName, mayFollowSheets } from "./sheets-progress";
import { NO_SUCH_TASTING } from "./sheets-refusals";

const AGAIN_MS = REMIND_AGAIN_MINUTES * 60_000;

/**
 * Tells the judges whose sheets are not all in how many are missing; nobody else, and nothing of what is in a glass.
 *
 * @returns How many judges were told.
 */
export async function remindJudges(
  member: Member,
  { id }: { readonly id: string },
): Promise<{ readonly judges: number }> {
  const { spaceId, userId } = member;
  const tasting = !isRecordId(id)
    ? null
    : await inSpace(spaceId, userId, (tx) =>
        tx.tasting.findUnique({
          where: { spaceId_id: { spaceId, id } },
          select: { title: true, state: true, stewardId: true },
        }),
      );
  if (tasting === null) throw new AppError("NOT_FOUND", NO_SUCH_TASTING);
  if (!mayFollowSheets(member, tasting)) {
    throw new AppError("FORBIDDEN", "Only the steward of a tasting and organisers remind its judges.");
  }
  const { title, state } = tasting;
  if (state !== "open" && state !== "closed") throw new AppError("CONFLICT", NO_SHEETS_NOW);
  const now = new Date();
  return inStewardsName(member, tasting, async (tx) => {
    const missing = missingByJudge(await countSheets(tx, { spaceId, tastingId: id }));
    if (missing.size === 0) throw new AppError("CONFLICT", "All sheets are in; there is nobody to remind.");
    // Of two at once the condition lets one through.
    const { count } = await tx.tasting.updateMany({
      where: {
        ...{ spaceId, id, state },
        OR: [{ remindedAt: null }, { remindedAt: { lte: new Date(now.getTime() - AGAIN_MS) } }],
      },
      data: { remindedAt: now },
    });
    if (count !== 1) throw new AppError("CONFLICT", TOO_SOON);
    for (const [judgeId, sheets] of missing) {
      const payload = { tastingId: id, title, note: reminderNote(sheets, state) };
      await tell(tx, member, [judgeId], { kind: "tasting reminder", payload });
    }
    return { judges: missing.size };
  });
}

const NO_SHEETS_NOW = "The tasting takes no sheets now, so there is nobody to remind.";
const TOO_SOON = `The judges were reminded less than ${String(REMIND_AGAIN_MINUTES)} minutes ago; give them time to write.`;

interface Missing {
  readonly missing: number;
  readonly toCome: number;
}

function missingByJudge(
  rows: readonly { readonly judgeId: string; readonly toCome: number; readonly handedIn: number }[],
): ReadonlyMap<string, Missing> {
  const byJudge = new Map<string, Missing>();
  for (const { judgeId, toCome, handedIn } of rows) {
    const known = byJudge.get(judgeId) ?? { missing: 0, toCome: 0 };
    byJudge.set(judgeId, { missing: known.missing + toCome - handedIn, toCome: known.toCome + toCome });
  }
  return new Map([...byJudge].filter(([, { missing }]) => missing > 0));
}
