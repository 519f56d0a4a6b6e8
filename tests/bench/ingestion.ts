/**
 * Readings of a sensor through the API of the running app, against the same rows written in batches by the driver alone,
 * turn by turn in the same run. The database and the origin come from the environment (`npm run bench -- ingestion`).
 */
import { createHash, randomUUID } from "node:crypto";
import { Client } from "pg";
import { z } from "zod";
import { DEMO_CLUB, DEMO_PEOPLE } from "@/seed-demo/people";
import { directory } from "@/lib/server/db";
import { environment } from "@/lib/server/environment";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { listWritableBrews } from "@/lib/server/sensors/writable-brews";
import { makeSensorKey } from "@/lib/server/sensors/tokens";
import { closeSession, openSession } from "@/lib/server/sessions/writes";

const BATCH = 1000;
const BATCHES = 16;
/** As many at once on either side. */
const SENDERS = 4;
const ROUNDS = 7;

interface Target {
  readonly origin: string;
  readonly member: Member;
  readonly brewId: string;
}

interface Sent {
  readonly id: string;
  readonly at: string;
  readonly value: number;
}

let minute = 0;
/** Readings that were never sent before. */
function newReadings(): readonly Sent[] {
  return Array.from({ length: BATCH }, () => {
    minute += 1;
    const at = new Date(Date.UTC(2020, 0, 1) + minute * 60_000).toISOString();
    return { id: randomUUID(), at, value: 18 + (minute % 400) / 100 };
  });
}

/** Rows a second, of several senders that each take the next batch when they have sent one; what is sent is made before. */
async function rate<B>(
  prepare: (readings: readonly Sent[]) => B,
  senders: readonly ((batch: B) => Promise<void>)[],
): Promise<number> {
  const batches = Array.from({ length: BATCHES }, () => prepare(newReadings()));
  const begun = performance.now();
  await Promise.all(
    senders.map(async (send) => {
      for (let batch = batches.pop(); batch !== undefined; batch = batches.pop()) await send(batch);
    }),
  );
  return (BATCH * BATCHES * 1000) / (performance.now() - begun);
}

async function throughApi({ origin, member, brewId }: Target): Promise<number> {
  // A key of its own for each round, for one alone would be told to wait.
  const { token } = await makeSensorKey(member, { name: "Bench", brewId, days: 1 });
  const headers = { authorization: `Bearer ${token}`, "content-type": "application/json" };
  const prepare = (sent: readonly Sent[]): string => {
    const readings = sent.map((each) => ({ ...each, brew: brewId, quantity: "fermenter.temperature", unit: "°C" }));
    return JSON.stringify({ readings });
  };
  const send = async (body: string): Promise<void> => {
    const response = await fetch(`${origin}/api/v1/readings`, { method: "POST", headers, body });
    const { stored } = z.object({ stored: z.int() }).parse(await response.json());
    if (stored !== BATCH) throw new Error(`${String(stored)} of ${String(BATCH)} readings were stored`);
  };
  return rate(
    prepare,
    Array.from({ length: SENDERS }, () => send),
  );
}

const INSERT = `
  INSERT INTO brew_event
    (space_id, id, brew_id, device_id, actor_id, kind, occurred_at, value, unit, payload, payload_hash)
  SELECT $1, id, $2, $3, $4, 'temperature', at, value, 'C', payload, hash
  FROM unnest($5::uuid[], $6::timestamptz[], $7::float8[], $8::jsonb[], $9::bytea[]) AS r (id, at, value, payload, hash)`;
const PAYLOAD = {
  quantity: "fermenter.temperature",
  sd: 0.5,
  instrument: "probe",
  sampleC: null,
  note: "",
  step: null,
};

/** The same rows as the driver takes them, each column an array: the quickest way it has. */
function toParameters({ member: { spaceId, userId }, brewId }: Target, batch: readonly Sent[]): readonly unknown[] {
  const payloads = batch.map(({ value }) => JSON.stringify({ ...PAYLOAD, entered: `${String(value)} °C` }));
  const hashes = payloads.map((text) => createHash("sha256").update(text).digest());
  const [ids, times, values] = [batch.map(({ id }) => id), batch.map(({ at }) => at), batch.map(({ value }) => value)];
  return [spaceId, brewId, randomUUID(), userId, ids, times, values, payloads, hashes];
}

function byDriver(target: Target, clients: readonly Client[]): Promise<number> {
  const prepare = (batch: readonly Sent[]): readonly unknown[] => toParameters(target, batch);
  const senders = clients.map((client) => async (parameters: readonly unknown[]): Promise<void> => {
    await client.query("BEGIN");
    await client.query("SELECT set_config('app.space_id', $1, true)", [target.member.spaceId]);
    const { rowCount } = await client.query(INSERT, [...parameters]);
    await client.query("COMMIT");
    if (rowCount !== BATCH) throw new Error("not every row was written");
  });
  return rate(prepare, senders);
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;

async function benchIngestion(): Promise<void> {
  const { id: userId } = await directory.appUser.findUniqueOrThrow({
    where: { emailNorm: DEMO_PEOPLE[0]?.email ?? "" },
  });
  const reference = await openSession({ userId, userAgent: "bench" });
  const viewer = await proveViewer(reference);
  const member = viewer === null ? null : await proveMember(viewer, DEMO_CLUB.slug);
  const [brew] = member === null ? [] : await listWritableBrews(member);
  if (member === null || brew === undefined) throw new Error("the demo club has no brew to write to");
  const target = { origin: environment.appOrigin ?? "", member, brewId: brew.id };
  const clients = Array.from(
    { length: SENDERS },
    () => new Client({ connectionString: environment.databaseUrl, options: "-c role=gyle_app" }),
  );
  await Promise.all(clients.map((client) => client.connect()));
  try {
    const ratios: number[] = [];
    const rates: { readonly api: number; readonly raw: number }[] = [];
    for (let round = 0; round <= ROUNDS; round++) {
      const rawRate = await byDriver(target, clients);
      const apiRate = await throughApi(target);
      // The first one warms up.
      if (round > 0) {
        ratios.push(apiRate / rawRate);
        rates.push({ api: apiRate, raw: rawRate });
      }
    }
    const shown = (values: readonly number[]): string => Math.round(median(values)).toLocaleString("en-GB");
    const [lowest, highest] = [Math.min(...ratios), Math.max(...ratios)].map((ratio) => ratio.toFixed(2));
    console.log(`readings by the driver alone            ${shown(rates.map((each) => each.raw))} rows/s`);
    console.log(
      `readings through the API                ${shown(rates.map((each) => each.api))} rows/s = ` +
        `${median(ratios).toFixed(2)} times the driver (${lowest ?? ""} to ${highest ?? ""} in ${String(ROUNDS)} rounds)`,
    );
  } finally {
    await Promise.all(clients.map((client) => client.end()));
    await closeSession(reference);
    await directory.$disconnect();
  }
}

await benchIngestion();
