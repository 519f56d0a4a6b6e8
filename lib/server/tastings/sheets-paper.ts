import "server-only";
import { randomUUID } from "node:crypto";
import type { TastingContent } from "@/lib/model/tasting/sheet-event";
import type { PaperChoice, PaperSheet } from "@/lib/model/tasting/sheet-paper";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { storeSheets } from "./sheets-ingest";
import { findJudged, type Judged } from "./sheets-read";
import { NO_SUCH_TASTING } from "./sheets-refusals";

/** Enters a sheet from paper in the judge's name; the archive keeps that the steward did, and the judge is told. */
export async function enterPaperSheet(member: Member, tastingId: string, paper: PaperSheet): Promise<void> {
  const { judgeId, flightNo, entryNo, sheet } = paper;
  await enter(member, { tastingId, judgeId, flightNo }, { kind: "sheet", entryNo, isFinal: true, payload: sheet });
}

/** The same of an answer in a triangle or duo-trio. */
export async function enterPaperChoice(member: Member, tastingId: string, paper: PaperChoice): Promise<void> {
  const { judgeId, flightNo, glassNo, note } = paper;
  await enter(member, { tastingId, judgeId, flightNo }, { kind: "choice", isFinal: true, payload: { glassNo, note } });
}

async function enter(
  member: Member,
  at: { readonly tastingId: string; readonly judgeId: string; readonly flightNo: number },
  content: TastingContent,
): Promise<void> {
  const { tastingId, judgeId, flightNo } = at;
  await requireSteward(member, tastingId);
  const [fate] = await storeSheets(member, [
    {
      event: {
        ...content,
        ...{ id: randomUUID(), tastingId, flightNo },
        // Paper is no device and has no count: each sheet is one of its own.
        ...{ deviceId: randomUUID(), deviceSeq: null, occurredAt: new Date().toISOString() },
      },
      ...{ judgeId, actorId: member.userId, sentAt: null, clockOffsetMs: null },
    },
  ]);
  if (fate?.fate === "rejected") throw new AppError("CONFLICT", fate.reason);
}

async function requireSteward({ spaceId, userId }: Member, id: string): Promise<void> {
  const tasting = !isRecordId(id)
    ? null
    : await inSpace(spaceId, userId, (tx) =>
        tx.tasting.findUnique({ where: { spaceId_id: { spaceId, id } }, select: { stewardId: true } }),
      );
  if (tasting === null) throw new AppError("NOT_FOUND", NO_SUCH_TASTING);
  if (tasting.stewardId !== userId) {
    throw new AppError("FORBIDDEN", "Only the steward of a tasting enters sheets from paper.");
  }
}

/** What a judge was served and has handed in, for the steward who has the paper; null for anybody else. */
export async function findPaperOf(member: Member, tastingId: string, judgeId: string): Promise<Judged | null> {
  try {
    await requireSteward(member, tastingId);
  } catch (error) {
    if (error instanceof AppError) return null;
    throw error;
  }
  return isRecordId(judgeId) ? findJudged(member, tastingId, judgeId) : null;
}
