import "server-only";
import { refusalWords } from "@/lib/model/field-errors";
import type { Delivery } from "@/lib/model/log/delivery";
import type { DeliveryAnswer, Rejection } from "@/lib/model/log/delivery-answer";
import type { TastingEvent } from "@/lib/model/tasting/sheet-event";
import { tastingEventInput } from "@/lib/model/tasting/sheet-event-input";
import { inSpace, isRefusedByRule, type SpaceTransaction } from "../db";
import { clockOffset } from "../log/clock-offset";
import { identifierOf } from "../log/identifier-of";
import type { Member } from "../session";
import { insertSheets, type NewSheet, type SheetFate } from "./sheets-insert";
import { sheetRefusals } from "./sheets-refusals";

/**
 * Takes a delivery of a judge's device, in any order and as often as it likes. What is answered as stored or duplicate is
 * on the disk of the server; what is rejected stays on the device, with the reason.
 */
export async function ingestSheets(member: Member, delivery: Delivery): Promise<DeliveryAnswer> {
  const receivedAt = new Date();
  const { taken, rejected } = readEvents(delivery.events);
  const unsteady = new Set(delivery.unsteady);
  const offset = clockOffset(delivery, receivedAt);
  const { userId } = member;
  const fates = await storeSheets(
    member,
    taken.map((event) => ({
      event,
      judgeId: userId,
      actorId: userId,
      sentAt: delivery.sentAt,
      clockOffsetMs: unsteady.has(event.id) ? null : offset,
    })),
  );
  const refused = fates.flatMap((fate) => (fate.fate === "rejected" ? [fate] : []));
  return {
    stored: idsOf(fates, "stored"),
    duplicate: idsOf(fates, "duplicate"),
    rejected: [...rejected, ...refused.map(({ id, reason, isSequenceTaken }) => ({ id, reason, isSequenceTaken }))],
    receivedAt: receivedAt.toISOString(),
  };
}

/** Stores events in one transaction: all that are right, or none. All are of one judge. */
export async function storeSheets(member: Member, sheets: readonly NewSheet[]): Promise<readonly SheetFate[]> {
  try {
    return await inSpace(member.spaceId, member.userId, (tx) => storeIn(tx, member, sheets));
  } catch (error) {
    if (!isRefusedByRule(error) || sheets.length === 0) throw error;
    const [only, ...others] = sheets;
    // A rule of the database that the border does not know: found one by one, so that the others are not held up.
    if (only !== undefined && others.length === 0) return [refused(only.event.id, REFUSED_BY_RULE)];
    const fates: SheetFate[] = [];
    for (const sheet of sheets) fates.push(...(await storeSheets(member, [sheet])));
    return fates;
  }
}

async function storeIn(
  tx: SpaceTransaction,
  member: Member,
  sheets: readonly NewSheet[],
): Promise<readonly SheetFate[]> {
  const [first] = sheets;
  if (first === undefined) return [];
  const events = sheets.map(({ event }) => event);
  const reasons = await sheetRefusals(tx, member.spaceId, first.judgeId, events);
  const allowed = sheets.filter(({ event }) => !reasons.has(event.id));
  const fates = [...reasons].map(([id, reason]) => refused(id, reason));
  return [...fates, ...(await insertSheets(tx, member.spaceId, allowed))];
}

const REFUSED_BY_RULE = "The tasting does not take this sheet as it is; look at its points and its time.";

function refused(id: string, reason: string): SheetFate {
  return { id, fate: "rejected", reason, isSequenceTaken: false };
}

function idsOf(fates: readonly SheetFate[], wanted: SheetFate["fate"]): readonly string[] {
  return fates.flatMap(({ id, fate }) => (fate === wanted ? [id] : []));
}

/** Reads each event on its own; one that names no identifier cannot be answered for and is left out. */
function readEvents(events: readonly unknown[]): {
  readonly taken: readonly TastingEvent[];
  readonly rejected: readonly Rejection[];
} {
  const taken = new Map<string, TastingEvent>();
  const rejected: Rejection[] = [];
  for (const event of events) {
    const parsed = tastingEventInput.safeParse(event);
    if (parsed.success) taken.set(parsed.data.id, parsed.data);
    else rejected.push({ id: identifierOf(event), reason: refusalWords(parsed.error), isSequenceTaken: false });
  }
  return { taken: [...taken.values()], rejected };
}
