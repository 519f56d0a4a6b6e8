import "server-only";
import { createHash } from "node:crypto";
import { isDeepStrictEqual } from "node:util";
import { refusalWords } from "@/lib/model/field-errors";
import type { LogEvent } from "@/lib/model/log/log-event";
import type { ReadingResult, ReadingsAnswer } from "@/lib/model/sensor/readings-answer";
import { sensorReading, toMeasured, type SensorReading } from "@/lib/model/sensor/sensor-reading";
import type { Fate } from "../log/insert-events";
import { storeEvents } from "../log/ingest";
import type { SensorSender } from "../proof";

type Read = { readonly event: LogEvent } | { readonly reason: string; readonly id: string | null };

/**
 * Takes readings of a sensor into the logs of brews: in one transaction all that are right, each once however often it
 * is sent. Every reading is answered for.
 */
export async function postReadings(
  sender: SensorSender,
  readings: readonly unknown[],
  now: Date,
): Promise<ReadingsAnswer> {
  const read = readings.map((reading) => readOne(sender, reading, now));
  const first = new Map<string, LogEvent>();
  for (const each of read) if ("event" in each && !first.has(each.event.id)) first.set(each.event.id, each.event);
  const actorId = sender.member.userId;
  const fates = await storeEvents(
    sender.member,
    [...first.values()].map((event) => ({ event, actorId, sentAt: null, clockOffsetMs: null })),
  );
  const fateOf = new Map(fates.map((fate) => [fate.id, fate]));
  const results = read.map((each, index) => resultOf(index, each, { first, fateOf }));
  const count = (fate: ReadingResult["fate"]): number => results.filter((each) => each.fate === fate).length;
  return { stored: count("stored"), duplicate: count("duplicate"), rejected: count("rejected"), results };
}

function readOne({ keyId, brewId }: SensorSender, reading: unknown, now: Date): Read {
  const parsed = sensorReading.safeParse(reading);
  if (!parsed.success) {
    return { id: null, reason: refusalWords(parsed.error) };
  }
  const { data } = parsed;
  const id = data.id?.toLowerCase() ?? null;
  const brew = (data.brew ?? brewId)?.toLowerCase();
  if (brew === undefined)
    return { id, reason: "brew is missing: this key is for several brews, so each reading names one" };
  if (brewId !== null && brew !== brewId)
    return { id, reason: `brew “${brew}”: this key is for the brew ${brewId} alone` };
  const answer = toMeasured(data, now);
  if (!answer.ok) return { id, reason: answer.reason };
  const { measured, occurredAt } = answer;
  const { kind, quantity, value, sd, instrument, sampleC, note, entered, step } = measured;
  return {
    // One literal, for thousands of them: what is spread together is slower to make and to read.
    event: {
      id: id ?? derivedId(keyId, brew, data, occurredAt),
      brewId: brew,
      deviceId: keyId,
      deviceSeq: null,
      occurredAt,
      kind,
      quantity,
      value,
      sd,
      instrument,
      sampleC,
      note,
      entered,
      step,
    },
  };
}

/** The same for the same sender, brew, quantity and time, so that a repeated reading is known without an identifier. */
function derivedId(keyId: string, brewId: string, { quantity }: SensorReading, occurredAt: string): string {
  const bytes = createHash("sha256").update([keyId, brewId, quantity, occurredAt].join("\n")).digest().subarray(0, 16);
  // Version 8 of RFC 9562: made by a rule of our own.
  bytes.writeUInt8((bytes.readUInt8(6) & 0x0f) | 0x80, 6);
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = bytes.toString("hex");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}

interface Known {
  readonly first: ReadonlyMap<string, LogEvent>;
  readonly fateOf: ReadonlyMap<string, Fate>;
}

function resultOf(index: number, read: Read, { first, fateOf }: Known): ReadingResult {
  if (!("event" in read)) return { index, id: read.id, fate: "rejected", reason: read.reason };
  const { event } = read;
  const { id } = event;
  const kept = first.get(id);
  const fate = fateOf.get(id);
  if (fate === undefined || fate.fate === "rejected") {
    return { index, id, fate: "rejected", reason: fate?.reason ?? "It was not kept." };
  }
  if (kept === event) return { index, id, fate: fate.fate };
  if (isDeepStrictEqual(kept, event)) return { index, id, fate: "duplicate" };
  return { index, id, fate: "rejected", reason: "Another reading of this request has the same identifier." };
}
