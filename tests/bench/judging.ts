/**
 * A large tasting: 60 judges save sheets of 200 entries through the running app, first at a pace, then all at once, beside
 * the same rows written by the driver alone over as many connections. Its statistics are a part of their own.
 * The database and the origin come from the environment (`npm run bench -- judging`).
 */
import { createHash, randomUUID } from "node:crypto";
import { setTimeout as delay } from "node:timers/promises";
import { Pool } from "pg";
import { z } from "zod";
import { createAccount } from "@/lib/server/accounts/create-account";
import { sessionCookie } from "@/lib/server/auth";
import { directory, inSpace } from "@/lib/server/db";
import { environment } from "@/lib/server/environment";
import { openSession } from "@/lib/server/sessions/writes";
import { DEMO_CLUB } from "@/seed-demo/people";
import { seededRandom } from "../faults/random";

const JUDGES = 60;
const ENTRIES = 200;
/** A flight has so many places at most. */
const IN_A_FLIGHT = 100;
/**
 * Of the saves of a judge so many come at each pace: a page saves when its writer rests, some three times a minute. The
 * first is four times that, the second twenty times.
 */
const PACES = [
  { words: "a save every 5 s each", paceMs: 5000, saves: 8 },
  { words: "a save a second each", paceMs: 1000, saves: 16 },
] as const;
const CONNECTIONS = 10;

interface Judge {
  readonly userId: string;
  readonly cookie: string;
  readonly deviceId: string;
}
interface Place {
  readonly spaceId: string;
  readonly tastingId: string;
  readonly stewardId: string;
}

const entryNo = (entry: number): number => 100 + entry;
const flightNo = (entry: number): number => 1 + Math.floor(entry / IN_A_FLIGHT);

async function newPerson(name: string): Promise<string> {
  const email = `${randomUUID()}@example.org`;
  return directory.$transaction((tx) => createAccount(tx, { email, displayName: name, passwordHash: "none" }));
}

async function newJudges(spaceId: string): Promise<readonly Judge[]> {
  const judges: Judge[] = [];
  for (let at = 0; at < JUDGES; at++) {
    const userId = await newPerson(`Judge ${String(at + 1)} (invented)`);
    await directory.membership.create({ data: { spaceId, userId, role: "judge" } });
    const reference = await openSession({ userId, userAgent: "bench" });
    judges.push({ userId, cookie: `${sessionCookie()}=${reference}`, deviceId: randomUUID() });
  }
  return judges;
}

/** Row by row as its steward: what the screens prepare takes long for so many. */
async function openLargeTasting(place: Place, judges: readonly Judge[]): Promise<void> {
  const { spaceId, tastingId, stewardId } = place;
  const key = { spaceId, tastingId };
  const flights = Array.from({ length: ENTRIES / IN_A_FLIGHT }, (_, at) => at + 1);
  const entries = Array.from({ length: ENTRIES }, (_, entry) => ({
    entryNo: entryNo(entry),
    flightNo: flightNo(entry),
  }));
  await inSpace(spaceId, stewardId, async (tx) => {
    await tx.tasting.create({ data: { spaceId, id: tastingId, title: "Bench", stewardId, createdBy: stewardId } });
    await tx.tastingFlight.createMany({
      data: flights.map((no) => ({ ...key, flightNo: no, title: `Flight ${String(no)}`, kind: "scored" })),
    });
    await tx.tastingEntry.createMany({ data: entries.map((entry) => ({ ...key, ...entry })) });
  });
  for (const { userId } of judges) {
    await inSpace(spaceId, stewardId, async (tx) => {
      await tx.tastingPanel.createMany({
        data: flights.map((no) => ({ ...key, flightNo: no, userId, part: "judge" })),
      });
      await tx.tastingServing.createMany({
        data: entries.map((entry, at) => ({ ...key, ...entry, judgeId: userId, position: 1 + (at % IN_A_FLIGHT) })),
      });
    });
  }
  await inSpace(spaceId, stewardId, (tx) =>
    tx.tasting.update({
      where: { spaceId_id: { spaceId, id: tastingId } },
      data: { state: "open", openedAt: new Date() },
    }),
  );
}

const random = seededRandom(1);
const NOTE = "Bready malt, some orange, clean; a little thin for the style.";

function payloadOf(): object {
  const upTo = (most: number): number => Math.floor(random() * (most + 1));
  const scores = { aroma: upTo(12), appearance: upTo(3), flavour: upTo(20), mouthfeel: upTo(5), overall: upTo(10) };
  const notes = { aroma: NOTE, appearance: NOTE, flavour: NOTE, mouthfeel: NOTE, overall: NOTE };
  return { scores, notes, descriptors: [{ word: "bitter", strength: 2 }] };
}

const answer = z.object({ stored: z.array(z.string()), rejected: z.array(z.unknown()) });

async function save(tastingId: string, { userId, cookie, deviceId }: Judge, entry: number): Promise<number> {
  const occurredAt = new Date().toISOString();
  const stamp = { id: randomUUID(), tastingId, deviceId, deviceSeq: entry + 1, occurredAt };
  const at = { flightNo: flightNo(entry), entryNo: entryNo(entry) };
  const event = { ...stamp, ...at, kind: "sheet", isFinal: true, payload: payloadOf() };
  const stated = { space: DEMO_CLUB.slug, user: userId, sentAt: occurredAt, roundTripMs: 0, unsteady: [] };
  const origin = environment.appOrigin ?? "";
  const begun = performance.now();
  const response = await fetch(`${origin}/api/tastings/ingest`, {
    method: "POST",
    headers: { cookie, origin, "content-type": "application/json" },
    body: JSON.stringify({ ...stated, events: [event] }),
  });
  const body: unknown = await response.json();
  const took = performance.now() - begun;
  const read = answer.safeParse(body);
  if (!read.success || read.data.stored.length !== 1) {
    throw new Error(`a save was answered with ${String(response.status)} ${JSON.stringify(body)}`);
  }
  return took;
}

/**
 * Saves from all judges, each at some moment of its turn and when its last one is answered. Judges do not wait for one
 * another, so neither may they here: with the same rest after each answer they would come in step, and all at once.
 */
async function saveAll(
  judges: readonly Judge[],
  a: {
    readonly from: number;
    readonly to: number;
    readonly paceMs: number;
    readonly by: typeof save;
    readonly tastingId: string;
  },
): Promise<readonly number[]> {
  const times: number[] = [];
  const begun = performance.now();
  await Promise.all(
    judges.map(async (judge) => {
      for (let entry = a.from; entry < a.to; entry++) {
        const due = (entry - a.from + random()) * a.paceMs;
        await delay(Math.max(0, begun + due - performance.now()));
        times.push(await a.by(a.tastingId, judge, entry));
      }
    }),
  );
  return times.sort((x, y) => x - y);
}

const INSERT = `
  INSERT INTO tasting_event (space_id, id, tasting_id, flight_no, judge_id, actor_id, kind, entry_no, device_id, device_seq,
    occurred_at, is_final, total, payload, payload_hash)
  VALUES ($1, $2, $3, $4, $5, $5, 'sheet', $6, $7, $8, now(), true, 30, $9, $10)`;

/** The floor: the same row, in a transaction that says who writes where, and nothing else. */
function byDriver(pool: Pool, { spaceId }: Place): typeof save {
  return async (tastingId, { userId }, entry) => {
    const payload = JSON.stringify(payloadOf());
    const hash = createHash("sha256").update(payload).digest();
    const begun = performance.now();
    const client = await pool.connect();
    try {
      await client.query("BEGIN");
      await client.query("SELECT set_config('app.space_id', $1, true), set_config('app.user_id', $2, true)", [
        spaceId,
        userId,
      ]);
      const at = [flightNo(entry), userId, entryNo(entry), randomUUID(), entry + 1, payload, hash];
      await client.query(INSERT, [spaceId, randomUUID(), tastingId, ...at]);
      await client.query("COMMIT");
    } finally {
      client.release();
    }
    return performance.now() - begun;
  };
}

const at = (sorted: readonly number[], share: number): number => sorted[Math.floor(share * (sorted.length - 1))] ?? NaN;
const ms = (value: number): string => `${value.toFixed(1)} ms`;

function tell(what: string, times: readonly number[], floor: readonly number[]): void {
  const ratio = at(times, 0.95) / at(floor, 0.95);
  console.log(
    `${what.padEnd(40)}p50 ${ms(at(times, 0.5))}, p95 ${ms(at(times, 0.95))} = ${ratio.toFixed(1)} times the driver ` +
      `(p50 ${ms(at(floor, 0.5))}, p95 ${ms(at(floor, 0.95))}); ${String(times.length)} saves, none refused`,
  );
}

async function benchJudging(): Promise<void> {
  const { id: spaceId } = await directory.space.findUniqueOrThrow({ where: { slug: DEMO_CLUB.slug } });
  const stewardId = await newPerson("Steward (invented)");
  await directory.membership.create({ data: { spaceId, userId: stewardId, role: "steward" } });
  const judges = await newJudges(spaceId);
  const place = { spaceId, tastingId: randomUUID(), stewardId };
  const bare = { spaceId, tastingId: randomUUID(), stewardId };
  await openLargeTasting(place, judges);
  await openLargeTasting(bare, judges);
  const pool = new Pool({
    connectionString: environment.databaseUrl,
    options: "-c role=gyle_app",
    max: CONNECTIONS,
  });
  try {
    const driver = byDriver(pool, bare);
    // As many as a device ever sends twice: the first ones of a server that has just started are not measured.
    const others = judges.map((judge) => ({ ...judge, deviceId: randomUUID() }));
    await saveAll(others, { from: 0, to: 2, paceMs: 0, by: save, tastingId: place.tastingId });
    const judge = async (words: string, paceMs: number, from: number, to: number): Promise<void> => {
      const floor = await saveAll(others, { paceMs, from, to, by: driver, tastingId: bare.tastingId });
      const times = await saveAll(judges, { paceMs, from, to, by: save, tastingId: place.tastingId });
      tell(`${String(JUDGES)} judges, ${words}`, times, floor);
    };
    let from = 0;
    for (const { words, paceMs, saves } of PACES) {
      await judge(words, paceMs, from, from + saves);
      from += saves;
    }
    await judge("without a pause", 0, from, ENTRIES);
  } finally {
    await pool.end();
    await directory.$disconnect();
  }
}

await benchJudging();
