import "server-only";
import type { DeliveryAnswer, Rejection } from "@/lib/model/log/delivery-answer";
import { refusalWords } from "@/lib/model/field-errors";
import type { Delivery } from "@/lib/model/log/delivery";
import type { LogEvent } from "@/lib/model/log/log-event";
import { logEventInput } from "@/lib/model/log/log-event-input";
import { packagingRefusals } from "../cellar/packaging-refusals";
import { inSpace, isRefusedByRule, type SpaceTransaction } from "../db";
import { scheduleAlarms } from "../push/alarms";
import type { Member } from "../session";
import { advanceBrews } from "./advance";
import { clockOffset } from "./clock-offset";
import { identifierOf } from "./identifier-of";
import { insertEvents, type Fate, type NewEvent } from "./insert-events";
import { brewRefusals } from "./writable-brews";

/**
 * Takes a delivery of a phone. What is answered as stored or duplicate is on the disk of the server; what is rejected
 * stays on the phone, with the reason.
 */
export async function ingest(member: Member, delivery: Delivery): Promise<DeliveryAnswer> {
  const receivedAt = new Date();
  const { taken, rejected } = readEvents(delivery.events);
  const unsteady = new Set(delivery.unsteady);
  const offset = clockOffset(delivery, receivedAt);
  const events = taken.map((event): NewEvent => ({
    event,
    actorId: member.userId,
    sentAt: delivery.sentAt,
    clockOffsetMs: unsteady.has(event.id) ? null : offset,
  }));
  const fates = await storeEvents(member, events);
  return {
    stored: idsOf(fates, "stored"),
    duplicate: idsOf(fates, "duplicate"),
    rejected: [...rejected, ...fates.flatMap((fate) => (fate.fate === "rejected" ? [fate] : []))].map(
      ({ id, reason, isSequenceTaken }) => ({ id, reason, isSequenceTaken }),
    ),
    receivedAt: receivedAt.toISOString(),
  };
}

/** Stores events in one transaction: all that are right, or none. */
export async function storeEvents(member: Member, events: readonly NewEvent[]): Promise<readonly Fate[]> {
  try {
    return await storeTogether(member, events);
  } catch (error) {
    if (!isRefusedByRule(error) || events.length === 0) throw error;
    const [only, ...others] = events;
    // A rule of the database that the border does not know: found one by one, so that the others are not held up.
    if (only !== undefined && others.length === 0) return [refusedByRule(only.event.id)];
    const fates: Fate[] = [];
    for (const event of events) fates.push(...(await storeEvents(member, [event])));
    return fates;
  }
}

/** Stores what belongs together: all of it, or nothing. The answer is why not; null when all of it is in the log. */
export async function storeWhole(member: Member, events: readonly LogEvent[]): Promise<string | null> {
  const news = events.map((event) => ({ event, actorId: member.userId, sentAt: null, clockOffsetMs: null }));
  try {
    await inSpace(member.spaceId, member.userId, async (tx) => {
      const refused = (await storeIn(tx, member, news)).find(({ fate }) => fate === "rejected");
      // Thrown, so that what was written before it is not.
      if (refused?.fate === "rejected") throw new NotWhole(refused.reason);
    });
    return null;
  } catch (error) {
    if (error instanceof NotWhole) return error.message;
    if (isRefusedByRule(error)) return REFUSED_BY_RULE;
    throw error;
  }
}

class NotWhole extends Error {
  override readonly name = "NotWhole";
}

function storeTogether(member: Member, events: readonly NewEvent[]): Promise<readonly Fate[]> {
  return inSpace(member.spaceId, member.userId, (tx) => storeIn(tx, member, events));
}

async function storeIn(tx: SpaceTransaction, member: Member, events: readonly NewEvent[]): Promise<readonly Fate[]> {
  const { spaceId } = member;
  const refusal = await brewRefusals(tx, member, new Set(events.map(({ event }) => event.brewId)));
  const packaging = await packagingRefusals(tx, member, events);
  const fates: Fate[] = [];
  const allowed: NewEvent[] = [];
  for (const each of events) {
    const reason = refusal(each.event.brewId) ?? packaging.get(each.event.id) ?? null;
    if (reason === null) allowed.push(each);
    else fates.push({ id: each.event.id, fate: "rejected", reason, isSequenceTaken: false });
  }
  fates.push(...(await insertEvents(tx, spaceId, allowed)));
  const stored = new Set(idsOf(fates, "stored"));
  const kept = allowed.filter(({ event }) => stored.has(event.id));
  await advanceBrews(tx, spaceId, kept);
  await scheduleAlarms(tx, spaceId, kept);
  return fates;
}

const REFUSED_BY_RULE = "The log cannot hold this entry as it is; look at its value and its time.";

function refusedByRule(id: string): Fate {
  return { id, fate: "rejected", reason: REFUSED_BY_RULE, isSequenceTaken: false };
}

function idsOf(fates: readonly Fate[], wanted: Fate["fate"]): readonly string[] {
  return fates.flatMap(({ id, fate }) => (fate === wanted ? [id] : []));
}

interface ReadEvents {
  readonly taken: readonly LogEvent[];
  readonly rejected: readonly Rejection[];
}

/** Reads each event on its own; one that names no identifier cannot be answered for and is left out. */
function readEvents(events: readonly unknown[]): ReadEvents {
  const taken = new Map<string, LogEvent>();
  const rejected: Rejection[] = [];
  for (const event of events) {
    const parsed = logEventInput.safeParse(event);
    if (parsed.success) taken.set(parsed.data.id, parsed.data);
    else {
      rejected.push({ id: identifierOf(event), reason: refusalWords(parsed.error), isSequenceTaken: false });
    }
  }
  return { taken: [...taken.values()], rejected };
}
