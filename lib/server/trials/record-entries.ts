import "server-only";
import { z } from "zod";
import { refusalWords } from "@/lib/model/field-errors";
import { trialEntry, type TrialEntry } from "@/lib/model/trial/trial-entry";
import type { DeliveryAnswer } from "@/lib/model/trial/trial";
import { AppError } from "../app-error";
import { contentHash, sameBytes } from "../content-hash";
import { inSpace, toJson, type SpaceTransaction } from "../db";
import type { Member } from "../session";
import { requireOwnKettle } from "./begin";
import { findTrial } from "./reads";

const MOST_ENTRIES = 2000;
const A_DAY_MS = 86_400_000;

type Refused = DeliveryAnswer["refused"][number];

/**
 * Adds entries to a trial, in the order in which they come. A page may send the same many times: each is kept once, and
 * every time answered well. One that cannot be taken is told with its reason and does not hold back the others.
 */
export async function recordEntries(
  member: Member,
  a: { readonly equipmentId: string; readonly trialId: string; readonly entries: readonly unknown[] },
): Promise<DeliveryAnswer> {
  const { spaceId, userId } = member;
  const read = a.entries.map(readEntry);
  const answered = await inSpace(spaceId, userId, (tx) => keepAll(tx, member, { ...a, read }));
  const trial = await findTrial(member, a.equipmentId, a.trialId);
  return { ...answered, entries: trial?.entries ?? [] };
}

type Read =
  | { readonly ok: true; readonly entry: TrialEntry; readonly hash: Uint8Array<ArrayBuffer> }
  | { readonly ok: false; readonly refused: Refused };

function readEntry(sent: unknown): Read {
  const id = z.looseObject({ id: z.string().max(64) }).safeParse(sent);
  const entry = trialEntry.safeParse(sent);
  const refuse = (reason: string): Read => ({ ok: false, refused: { id: id.success ? id.data.id : "", reason } });
  if (!entry.success) return refuse(refusalWords(entry.error));
  if (Date.parse(entry.data.occurredAt) > Date.now() + A_DAY_MS) {
    return refuse(
      `Time of the reading ${entry.data.occurredAt} is more than a day ahead: set the clock of this device`,
    );
  }
  return { ok: true, entry: entry.data, hash: contentHash(entry.data) };
}

async function keepAll(
  tx: SpaceTransaction,
  member: Member,
  a: { readonly equipmentId: string; readonly trialId: string; readonly read: readonly Read[] },
): Promise<Omit<DeliveryAnswer, "entries">> {
  const { spaceId, userId } = member;
  const { trialId, equipmentId, read } = a;
  const trial = await tx.commissioningTrial.findFirst({ where: { spaceId, id: trialId, equipmentId } });
  if (trial === null) throw new AppError("NOT_FOUND", "There is no such trial here.");
  await requireOwnKettle(tx, member, equipmentId);
  const there = await tx.trialReading.findMany({ where: { spaceId, trialId }, select: { id: true } });
  const known = new Set(there.map(({ id }) => id));
  const refused: Refused[] = [];
  const taken: { readonly entry: TrialEntry; readonly hash: Uint8Array<ArrayBuffer> }[] = [];
  for (const each of read) {
    if (!each.ok) refused.push(each.refused);
    else if (each.entry.replaces !== null && !known.has(each.entry.replaces)) {
      refused.push({ id: each.entry.id, reason: "The entry that this one corrects is not in this trial" });
    } else if (known.size >= MOST_ENTRIES && !known.has(each.entry.id)) {
      refused.push({ id: each.entry.id, reason: `A trial takes ${String(MOST_ENTRIES)} entries` });
    } else {
      known.add(each.entry.id);
      taken.push(each);
    }
  }
  await tx.trialReading.createMany({
    data: taken.map(({ entry, hash }) => ({ spaceId, trialId, actorId: userId, payloadHash: hash, ...rowOf(entry) })),
    skipDuplicates: true,
  });
  const stored = await sameAsKept(tx, { spaceId, trialId }, taken, refused);
  return { stored, refused };
}

function rowOf(entry: TrialEntry) {
  const { id, part, run, kind, replaces } = entry;
  return {
    ...{ id, part, run, kind, replaces },
    occurredAt: new Date(entry.occurredAt),
    value: "value" in entry ? entry.value : null,
    payload: toJson(entry.payload),
  };
}

/** Tells what is kept from another entry under an identifier that is taken. */
async function sameAsKept(
  tx: SpaceTransaction,
  { spaceId, trialId }: { readonly spaceId: string; readonly trialId: string },
  taken: readonly { readonly entry: TrialEntry; readonly hash: Uint8Array }[],
  refused: Refused[],
): Promise<readonly string[]> {
  const rows = await tx.trialReading.findMany({
    where: { spaceId, trialId, id: { in: taken.map(({ entry }) => entry.id) } },
    select: { id: true, payloadHash: true },
  });
  const kept = new Map(rows.map(({ id, payloadHash }) => [id, payloadHash]));
  return taken.flatMap(({ entry, hash }) => {
    const found = kept.get(entry.id);
    if (found !== undefined && sameBytes(found, hash)) return [entry.id];
    refused.push({ id: entry.id, reason: "Another entry with this identifier is there already; nothing was changed" });
    return [];
  });
}
