import { randomBytes, randomUUID } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { directory } from "@/lib/server/db";
import { openClient, type DatabaseClient } from "@/lib/server/database/client";
import { openPool } from "@/lib/server/database/pool";
import { liveStream } from "@/lib/server/live/live-stream";
import { listRecipes } from "@/lib/server/recipes/list";
import { listSummaries } from "@/lib/server/summaries/reads";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";
import { eventRow } from "../../support/content-rows";
import { readLive } from "../../support/live-reader";
import { HAS_PGBOUNCER, makePooledAccount, startPgbouncer } from "../../support/pgbouncer";
import { connectAs, insert } from "../../support/sql-session";
import { withClient } from "../../support/open-client";

const CONNECTIONS = 4;
const CLIENTS = 5;
const TURNS = 100;

const direct = process.env.DATABASE_URL ?? "";
const superuser = new URL(process.env.SUPERUSER_URL_TEST ?? "");
superuser.pathname = new URL(direct).pathname;
const account = { name: `web_${randomBytes(4).toString("hex")}`, password: randomBytes(12).toString("hex") };

if (!HAS_PGBOUNCER) console.warn("PgBouncer is not installed: its tests are passed over (apt-get install pgbouncer).");

describe.skipIf(!HAS_PGBOUNCER)("the application behind PgBouncer in transaction mode", () => {
  let pooler: Awaited<ReturnType<typeof startPgbouncer>>;

  beforeAll(async () => {
    await makePooledAccount(superuser.href, account);
    pooler = await startPgbouncer(direct, { ...account, connections: CONNECTIONS });
    process.env.DATABASE_URL = pooler.url;
    process.env.DATABASE_DIRECT_URL = direct;
  });

  afterAll(async () => {
    await directory.$disconnect();
    process.env.DATABASE_URL = direct;
    delete process.env.DATABASE_DIRECT_URL;
    await pooler.stop();
    await withClient(superuser.href, (client) => client.query(`DROP ROLE ${account.name}`));
  });

  it("shows fifty clients of four clubs on four connections their own rows and none of another club", async () => {
    const clubs = await Promise.all(Array.from({ length: 4 }, () => newClub("member")));
    for (const { organiser, member } of clubs) await newBrewing(organiser, member);
    const clients = Array.from({ length: CLIENTS }, () => openClient(() => ({ address: pooler.url, isPooled: true })));
    const seen = { own: 0, foreign: 0, missing: 0 };
    await Promise.all(
      clients.flatMap((client, at) =>
        Array.from({ length: 10 }, async (_, place) => {
          for (let turn = 0; turn < TURNS / 10; turn++) {
            const { spaceId, userId } = clubs[(at + place + turn) % clubs.length]?.member ?? expect.fail();
            const found = await spacesShown(client, spaceId, userId);
            seen.own += found.filter((id) => id === spaceId).length;
            seen.foreign += found.filter((id) => id !== spaceId).length;
            if (!found.includes(spaceId)) seen.missing++;
          }
        }),
      ),
    );
    const opened = await withClient(superuser.href, (client) =>
      client.query("SELECT FROM pg_stat_activity WHERE usename = $1", [account.name]),
    );
    await Promise.all(clients.map((client) => client.$disconnect()));
    expect(seen).toEqual({ own: CLIENTS * TURNS, foreign: 0, missing: 0 });
    expect(opened.rowCount).toBeLessThanOrEqual(CONNECTIONS);
  });

  it("would show another club's rows if the space were told to the session", async () => {
    // The control: what the test above would find wrong.
    const [one, two] = await Promise.all([newClub("member"), newClub("member")]);
    for (const { organiser, member } of [one, two]) await newBrewing(organiser, member);
    const pool = openPool({ address: pooler.url, isPooled: true });
    let foreign = 0;
    await Promise.all(
      Array.from({ length: 10 }, async (_, place) => {
        const client = await pool.connect();
        const { spaceId } = (place % 2 === 0 ? one : two).member;
        for (let turn = 0; turn < 20; turn++) {
          await client.query("SELECT set_config('app.space_id', $1, false)", [spaceId]);
          const { rows } = await client.query<{ space_id: string }>("SELECT space_id FROM recipe");
          foreign += rows.filter((row) => row.space_id !== spaceId).length;
        }
        await client.query("SELECT set_config('app.space_id', '', false)");
        client.release();
      }),
    );
    await pool.end();
    // The session's own word stays on the pooler's connections, which are given up with it.
    await pooler.stop();
    pooler = await startPgbouncer(direct, { ...account, connections: CONNECTIONS });
    process.env.DATABASE_URL = pooler.url;
    await directory.$disconnect();
    expect(foreign).toBeGreaterThan(0);
  });

  it("signs in, writes, reads, summarises and is told of what is new", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId } = await newBrewing(organiser, member);
    expect(await listRecipes(member)).toHaveLength(1);
    expect((await listSummaries(member, {}))[0]?.summary).not.toBeNull();
    const reader = readLive(
      liveStream({
        key: { spaceId: member.spaceId, brewId },
        since: null,
        mayLook: () => Promise.resolve(true),
        signal: new AbortController().signal,
      }),
    );
    const row = eventRow({ space_id: member.spaceId, id: brewId }, member.userId);
    const payload = {
      ...(row.payload as object),
      ...{ sd: 0.2, instrument: "hydrometer", sampleC: 20, note: "", entered: "20 °P" },
    };
    process.env.DATABASE_URL = direct;
    const client = await connectAs("gyle_app", member);
    process.env.DATABASE_URL = pooler.url;
    await insert(client, "brew_event", { ...row, payload });
    await client.end();
    await reader.until(() => reader.ids().includes(String(row.id)));
    await reader.stop();
  });

  it("works as the application's role, also outside of a space", async () => {
    const found = await directory.$queryRaw`
      SELECT current_user::text AS role, current_setting('statement_timeout') AS longest`;
    expect(found).toEqual([{ role: "gyle_app", longest: "5s" }]);
    await expect(directory.$executeRaw`CREATE TABLE mine (id int)`).rejects.toThrow(/permission denied/);
  });

  it("asks nothing through an account that works as somebody else", async () => {
    const other = { name: `owner_${randomBytes(4).toString("hex")}`, password: randomUUID() };
    await withClient(superuser.href, (client) =>
      client.query(`CREATE ROLE ${other.name} LOGIN PASSWORD '${other.password}'`),
    );
    const wrong = await startPgbouncer(direct, { ...other, connections: 1 });
    const client = openClient(() => ({ address: wrong.url, isPooled: true }));
    await expect(inSpaceOf(client)).rejects.toThrow(new RegExp(`works as ${other.name}`));
    await client.$disconnect();
    await wrong.stop();
    await withClient(superuser.href, (admin) => admin.query(`DROP ROLE ${other.name}`));
  });
});

const inSpaceOf = (client: DatabaseClient) => client.$transaction((tx) => tx.$queryRaw`SELECT 1`);

/** The spaces of whatever recipes are shown, asked without naming the space; only row-level security keeps others away. */
function spacesShown(client: DatabaseClient, spaceId: string, userId: string): Promise<readonly string[]> {
  return client.$transaction(async (tx) => {
    await tx.$queryRaw`
      SELECT set_config('app.space_id', ${spaceId}, true), set_config('app.user_id', ${userId}, true)`;
    const found = await tx.recipe.findMany({ select: { spaceId: true } });
    return found.map((row) => row.spaceId);
  });
}
