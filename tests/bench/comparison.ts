/**
 * The club's view over 500 brews with 100 000 readings, and what a million readings in the table change for the reads of a
 * brew's page. The database comes from the environment (`npm run bench -- comparison`), holds the demo club and is filled.
 */
import { randomUUID } from "node:crypto";
import { Client } from "pg";
import { answerOf } from "@/lib/model/summary/answer";
import { questionOf } from "@/lib/model/summary/question";
import { findBrew } from "@/lib/server/brews/reads";
import { directory } from "@/lib/server/db";
import { environment } from "@/lib/server/environment";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { openSession } from "@/lib/server/sessions/writes";
import { listAcross } from "@/lib/server/summaries/across";
import { remakeStale } from "@/lib/server/summaries/stale";
import { DEMO_CLUB, DEMO_PEOPLE } from "../../seed-demo/people";

const BREWS = 500;
const READINGS_EACH = 200;
const OTHERS = 900_000;
const ROUNDS = 60;
const VIEWS = 8;

async function organiser(): Promise<Member> {
  const { id: userId } = await directory.appUser.findUniqueOrThrow({
    where: { emailNorm: DEMO_PEOPLE[0]?.email ?? "" },
  });
  const viewer = await proveViewer(await openSession({ userId, userAgent: "bench" }));
  const member = viewer === null ? null : await proveMember(viewer, DEMO_CLUB.slug);
  if (member === null) throw new Error("there is no demo club");
  return member;
}

/** Copies of the demo's brews with their readings, each with a series of a fermenter. */
const COPY_BREWS = `
  WITH source AS (SELECT b.*, row_number() OVER (ORDER BY id) AS n, count(*) OVER () AS many
                  FROM brew b WHERE started_at IS NOT NULL AND dropped_at IS NULL)
  INSERT INTO brew (space_id, id, title, recipe_id, recipe_rev, recipe_root, equipment_id, equipment_rev, brewer_user_id,
                    target_volume_l, recipe, equipment_snapshot, ambient, run_sheet, predicted, calc_version, state, started_at)
  SELECT s.space_id, gen_random_uuid(), s.title, s.recipe_id, s.recipe_rev, s.recipe_root, s.equipment_id, s.equipment_rev,
         s.brewer_user_id, s.target_volume_l, s.recipe, s.equipment_snapshot, s.ambient, s.run_sheet, s.predicted,
         s.calc_version, 'in package', s.started_at - make_interval(days => g)
  FROM generate_series(1, $1::int) g JOIN source s ON s.n = 1 + g % s.many
  RETURNING id`;
const COPY_READINGS = `
  INSERT INTO brew_event (space_id, id, brew_id, device_id, actor_id, kind, occurred_at, value, unit, payload, payload_hash)
  SELECT c.space_id, gen_random_uuid(), c.id, $2::uuid, e.actor_id, e.kind, c.started_at + (e.occurred_at - o.started_at),
         e.value + (random() - 0.5) * 0.002, e.unit, e.payload, e.payload_hash
  FROM brew c JOIN LATERAL (SELECT * FROM brew o WHERE o.equipment_id = c.equipment_id AND o.recipe_id = c.recipe_id
                              AND o.id <> ALL ($1::uuid[]) AND o.started_at IS NOT NULL LIMIT 1) o ON true
  JOIN brew_event e ON e.brew_id = o.id AND e.kind IN ('gravity', 'volume')
  WHERE c.id = ANY ($1::uuid[])`;
const SERIES = `
  INSERT INTO brew_event (space_id, id, brew_id, device_id, actor_id, kind, occurred_at, value, unit, payload, payload_hash)
  SELECT b.space_id, gen_random_uuid(), b.id, $2::uuid, b.brewer_user_id, 'temperature',
         b.started_at + g * interval '20 minutes', 19 + random(), 'C',
         '{"quantity": "fermenter.temperature", "sd": 0.5, "instrument": "probe", "sampleC": null, "note": "", "entered": "", "step": null}',
         sha256(g::text::bytea)
  FROM unnest($1::uuid[]) AS wanted (id) JOIN brew b USING (id), generate_series(1, $3::int) g`;

const at = (sorted: readonly number[], share: number): number => sorted[Math.floor(share * (sorted.length - 1))] ?? NaN;

async function timed(rounds: number, work: (round: number) => Promise<unknown>): Promise<readonly number[]> {
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    await work(round);
    times.push(performance.now() - start);
  }
  // The first ones warm up.
  return times.slice(Math.ceil(rounds / 8)).sort((a, b) => a - b);
}

const inMs = (value: number): string => `${value.toFixed(1)} ms`;

async function fill(client: Client, ids: readonly string[], readings: number): Promise<void> {
  // In steps, so that no statement takes longer than the database allows.
  const step = Math.max(1, Math.floor(50_000 / readings));
  for (let i = 0; i < ids.length; i += step) {
    await client.query(SERIES, [ids.slice(i, i + step), randomUUID(), readings]);
  }
}

async function benchComparison(): Promise<void> {
  const member = await organiser();
  const client = new Client({
    connectionString: environment.databaseUrl,
    options: `-c role=gyle_app -c app.space_id=${member.spaceId}`,
  });
  await client.connect();
  try {
    const copied = await client.query<{ id: string }>(COPY_BREWS, [BREWS]);
    const ids = copied.rows.map(({ id }) => id);
    await client.query(COPY_READINGS, [ids, randomUUID()]);
    await fill(client, ids, READINGS_EACH);
    await client.query("ANALYZE brew_event, brew, brew_summary").catch(() => undefined);
    const start = performance.now();
    let made = 0;
    for (let n = await remakeStale(member.spaceId, 0); n > 0; n = await remakeStale(member.spaceId, 0)) made += n;
    console.log(
      `summaries made anew                     ${inMs((performance.now() - start) / made)} each, ${String(made)} of them`,
    );

    const question = questionOf({});
    const view = await timed(VIEWS, () => listAcross(member, {}, { question, asked: {} }));
    const { brews } = await listAcross(member, {}, { question, asked: {} });
    const answered = await timed(VIEWS, async () => Promise.resolve(answerOf(question, brews)));
    console.log(
      `club view over ${String(brews.length)} brews              ${inMs(at(view, 0.5))} read and answered, ${inMs(at(answered, 0.5))} of it ` +
        `the answer (highest ${inMs(at(view, 1))} and ${inMs(at(answered, 1))})`,
    );

    const few = await timed(ROUNDS, (round) => findBrew(member, ids[round % ids.length] ?? ""));
    // The others lie in brews of their own, as those of other years do.
    const others = (await client.query<{ id: string }>(COPY_BREWS, [BREWS])).rows.map(({ id }) => id);
    await fill(client, others, OTHERS / BREWS);
    const [counted] = (await client.query<{ n: number }>("SELECT count(*)::int AS n FROM brew_event")).rows;
    const n = counted?.n ?? 0;
    const many = await timed(ROUNDS, (round) => findBrew(member, ids[round % ids.length] ?? ""));
    console.log(
      `a brew's page, p95 of its reads         ${inMs(at(few, 0.95))} among 100 000 readings, ${inMs(at(many, 0.95))} among ` +
        `${n.toLocaleString("en-GB")}: ${(at(many, 0.95) / at(few, 0.95)).toFixed(2)} times (medians ${(at(many, 0.5) / at(few, 0.5)).toFixed(2)})`,
    );
    const plan = await client.query<{ "QUERY PLAN": string }>(
      "EXPLAIN SELECT * FROM brew_event WHERE space_id = $1 AND brew_id = $2",
      [member.spaceId, ids[0]],
    );
    console.log(
      `by                                      ${plan.rows.map((row) => row["QUERY PLAN"].trim()).find((line) => line.includes("Scan")) ?? ""}`,
    );
  } finally {
    await client.end();
    await directory.$disconnect();
  }
}

await benchComparison();
