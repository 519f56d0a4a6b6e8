import { randomUUID } from "node:crypto";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { applyMigrations } from "@/lib/ops/apply-migrations";
import { startThrowAwayDatabase } from "@/lib/ops/embedded-database.mjs";
import { directory, inSpace, readSpace } from "@/lib/server/db";
import { placeOfWrite } from "@/lib/server/recent-write";
import { MIGRATIONS } from "../../support/database";
import { withClient } from "../../support/open-client";
import { startStandby } from "../../support/standby";

const ROUNDS = 60;
/** A second server of this machine writes at the same time, so the figures are not those of a quiet one. */
const PATIENCE = 120_000;

const reader = { spaceId: randomUUID(), userId: randomUUID() };
const given = process.env.DATABASE_URL;
let primary: Awaited<ReturnType<typeof startThrowAwayDatabase>>;
let standby: Awaited<ReturnType<typeof startStandby>>;

beforeAll(async () => {
  // What is committed is written, as on a server that people rely on; the place of the log is known by that.
  primary = await startThrowAwayDatabase("gylebook", { flags: ["-c fsync=off", "-c wal_keep_size=256MB"] });
  await applyMigrations({ databaseUrl: primary.url, folder: MIGRATIONS });
  standby = await startStandby(primary);
  process.env.DATABASE_URL = primary.url;
  process.env.DATABASE_REPLICA_URL = standby.url;
}, PATIENCE);

afterAll(async () => {
  await directory.$disconnect();
  process.env.DATABASE_URL = given;
  delete process.env.DATABASE_REPLICA_URL;
  await standby.stop();
  await primary.stop();
}, PATIENCE);

const onStandby = (sql: string) => withClient(standby.superuserUrl, (client) => client.query(sql));

afterEach(() => onStandby("SELECT pg_wal_replay_resume()"));

/** Writes a recipe's row and says where the log was then. */
async function write(): Promise<{ readonly id: string; readonly lsn: string }> {
  const id = randomUUID();
  await inSpace(
    reader.spaceId,
    reader.userId,
    (tx) => tx.$executeRaw`
      INSERT INTO recipe (space_id, id, title, root_id, created_by)
      VALUES (${reader.spaceId}::uuid, ${id}::uuid, 'Bitter', ${id}::uuid, ${reader.userId}::uuid)`,
  );
  return { id, lsn: (await placeOfWrite()) ?? expect.fail("there is no place") };
}

/** Whether a row is shown, and by which of the two servers. */
const look = (id: string, seen: Parameters<typeof readSpace>[2]) =>
  readSpace(
    reader,
    async (tx) => {
      const [server] = await tx.$queryRaw<{ standby: boolean }[]>`SELECT pg_is_in_recovery() AS standby`;
      const found = await tx.recipe.count({ where: { spaceId: reader.spaceId, id } });
      return { isShown: found === 1, isStandby: server?.standby === true };
    },
    seen,
  );

describe("a read from the hot standby", () => {
  it("shows a reader what they have written, every time, and mostly from the standby", async () => {
    const looks = [];
    for (let round = 0; round < ROUNDS; round++) {
      const { id, lsn } = await write();
      looks.push(await look(id, { lsn }));
    }
    expect(looks.filter(({ isShown }) => !isShown)).toEqual([]);
    expect(looks.filter(({ isStandby }) => isStandby).length).toBeGreaterThan(ROUNDS / 2);
  });

  it("would show something older to whoever does not say what they wrote", async () => {
    await onStandby("SELECT pg_wal_replay_pause()");
    const { id } = await write();
    expect(await look(id, "nothing")).toEqual({ isShown: false, isStandby: true });
  });

  it("is one from the primary where the standby does not come up to it", async () => {
    await onStandby("SELECT pg_wal_replay_pause()");
    const { id, lsn } = await write();
    expect(await look(id, { lsn })).toEqual({ isShown: true, isStandby: false });
    await onStandby("SELECT pg_wal_replay_resume()");
    await expect.poll(() => look(id, { lsn }), { timeout: 10_000 }).toEqual({ isShown: true, isStandby: true });
  });

  it("is one from the primary where nobody knows what the reader wrote", async () => {
    const { id } = await write();
    expect(await look(id, "all")).toEqual({ isShown: true, isStandby: false });
    // Outside of a request nobody knows.
    expect(await look(id, undefined)).toEqual({ isShown: true, isStandby: false });
  });

  it("is under row-level security as anywhere", async () => {
    const { id, lsn } = await write();
    const elsewhere = { spaceId: randomUUID(), userId: reader.userId };
    const found = await readSpace(elsewhere, (tx) => tx.recipe.count({ where: { id } }), { lsn });
    expect(found).toBe(0);
  });

  it("goes on from the primary when the standby is gone", async () => {
    const { id } = await write();
    await standby.stop();
    expect(await look(id, "nothing")).toEqual({ isShown: true, isStandby: false });
    standby = await startStandby(primary);
  }, 60_000);
});
