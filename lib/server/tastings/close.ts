import "server-only";
import { TASTING_STATE_WORDS, TASTING_STATES, type TastingState } from "@/lib/model/tasting/tasting";
import { roleMay } from "@/lib/model/roles";
import { AppError } from "../app-error";
import { writeAudit } from "../audit";
import { directory, inSpace, type SpaceTransaction } from "../db";
import { tell } from "../notices/writes";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { storedWord } from "../stored-word";

/** Ends judging; what judges wrote without a network still comes in until the reveal. */
export async function closeTasting(member: Member, { id }: { readonly id: string }): Promise<void> {
  const { spaceId, userId } = member;
  await inSpace(spaceId, userId, async (tx) => {
    const tasting = await requireTasting(tx, spaceId, id);
    if (tasting.stewardId !== userId && !roleMay(member.role, "organise")) {
      throw new AppError("FORBIDDEN", "Only its steward or an organiser closes a tasting.");
    }
    await move(tx, {
      spaceId,
      id,
      from: "open",
      present: tasting.state,
      to: { state: "closed", closedAt: new Date() },
    });
  });
}

/**
 * Tells the club what was in the glasses: one act of one organiser, noted in the audit log, never taken back. Whoever
 * brewed or judged is told.
 */
export async function revealTasting(member: Member, { id }: { readonly id: string }): Promise<void> {
  requireAbility(member, "organise");
  const { spaceId, userId } = member;
  await inSpace(spaceId, userId, async (tx) => {
    const { title, state } = await requireTasting(tx, spaceId, id);
    const to = { state: "revealed" as const, revealedAt: new Date(), revealedBy: userId };
    await move(tx, { spaceId, id, from: "closed", present: state, to });
    // From here on the database shows everybody what the entries are.
    const told = await concerned(tx, { spaceId, tastingId: id });
    await tell(tx, member, told, { kind: "tasting revealed", payload: { tastingId: id, title, note: "" } });
  });
  await writeAudit(directory, { action: "reveal", outcome: "ok", actor: userId, spaceId, target: id });
}

async function requireTasting(tx: SpaceTransaction, spaceId: string, id: string) {
  const tasting = await tx.tasting.findUnique({
    where: { spaceId_id: { spaceId, id } },
    select: { title: true, state: true, stewardId: true },
  });
  if (tasting === null) throw new AppError("NOT_FOUND", "There is no such tasting here.");
  return { ...tasting, state: storedWord(TASTING_STATES, tasting.state) };
}

/** Of two at once the condition lets one through; the other is told what the tasting has become. */
async function move(
  tx: SpaceTransaction,
  a: {
    readonly spaceId: string;
    readonly id: string;
    readonly from: TastingState;
    readonly present: TastingState;
    readonly to: { readonly state: TastingState } & Readonly<Record<string, unknown>>;
  },
): Promise<void> {
  const { spaceId, id, from, to } = a;
  const { count } = await tx.tasting.updateMany({
    where: { spaceId, id, state: from },
    data: { ...to, lockVersion: { increment: 1 } },
  });
  if (count === 1) return;
  throw new AppError("CONFLICT", `The tasting is ${TASTING_STATE_WORDS[a.present]}, so it is not ${to.state} now.`);
}

async function concerned(
  tx: SpaceTransaction,
  within: { readonly spaceId: string; readonly tastingId: string },
): Promise<readonly string[]> {
  const [identities, panel] = await Promise.all([
    tx.tastingIdentity.findMany({
      where: within,
      select: { brewerUserId: true, brew: { select: { collaborators: { select: { userId: true } } } } },
    }),
    tx.tastingPanel.findMany({ where: { ...within, part: "judge" }, select: { userId: true } }),
  ]);
  return [
    ...identities.flatMap(({ brewerUserId, brew }) => [
      ...(brewerUserId === null ? [] : [brewerUserId]),
      ...(brew?.collaborators ?? []).map(({ userId }) => userId),
    ]),
    ...panel.map(({ userId }) => userId),
  ];
}
