import { createHash, randomUUID } from "node:crypto";
import { appendFile, cp, mkdtemp, readdir, readFile, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gunzipSync, gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { backUp, type BackupMade, type BackupOrder } from "@/lib/ops/backup/back-up";
import { restore } from "@/lib/ops/backup/restore";
import { findProgram } from "@/lib/ops/backup/dump-format";
import { blobsOf } from "@/lib/server/blobs/open-blobs";
import { keepPhoto } from "@/lib/server/photos/writes";
import type { Member } from "@/lib/server/session";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";
import { createDatabase, MIGRATIONS } from "../../support/database";
import { withClient } from "../../support/open-client";
import { gpsJpeg } from "../../support/pictures";

const owner = () => process.env.DATABASE_URL ?? "";
const pgDump = await findFitting();

/** The server of the tests may be older than the embedded one. */
async function findFitting(): Promise<string | null> {
  const version = await withClient(owner(), async (client) => {
    const { rows } = await client.query<{ number: number }>(
      "SELECT current_setting('server_version_num')::int AS number",
    );
    return Math.floor((rows[0]?.number ?? 0) / 10_000);
  });
  return findProgram("pg_dump", version);
}

function asSuperuser(databaseUrl: string): string {
  const address = new URL(process.env.SUPERUSER_URL_TEST ?? "");
  address.pathname = new URL(databaseUrl).pathname;
  return address.href;
}

let folder: string;
let member: Member;
let made: BackupMade;

const order = (change: Partial<BackupOrder> = {}): BackupOrder => ({
  databaseUrl: asSuperuser(owner()),
  folder: join(folder, "backups"),
  keep: 2,
  format: "rows",
  now: new Date("2026-03-01T03:00:00Z"),
  ...change,
});

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "gylebook-backup-"));
  vi.stubEnv("BLOB_FOLDER", join(folder, "store"));
  const club = await newClub("member");
  member = club.member;
  const { brewId } = await newBrewing(club.organiser, member);
  await keepPhoto(member, { id: randomUUID(), brewId, bytes: await gpsJpeg() });
  made = await backUp(order());
});

afterAll(async () => {
  vi.unstubAllEnvs();
  await rm(folder, { recursive: true });
});

/** How many rows each table has and a hash of all of them, by a statement that the backup does not use. */
function contentOf(databaseUrl: string): Promise<Readonly<Record<string, unknown>>> {
  return withClient(asSuperuser(databaseUrl), async (client) => {
    const content: Record<string, unknown> = {};
    const { rows } = await client.query<{ name: string }>(
      "SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' AND tablename <> 'rate_limit'",
    );
    for (const { name } of rows) {
      const found = await client.query(
        `SELECT count(*)::int AS rows, md5(string_agg(to_jsonb(t)::text, ',' ORDER BY to_jsonb(t)::text)) AS hash
         FROM ${name} t`,
      );
      content[name] = found.rows[0];
    }
    return content;
  });
}

async function expectEqualTables(restored: string): Promise<void> {
  const before = await contentOf(owner());
  expect(before.app_user).toMatchObject({ rows: expect.any(Number) as number });
  expect(await contentOf(restored)).toEqual(before);
}

async function restored(backup: string, work: (databaseUrl: string) => Promise<void>): Promise<void> {
  const target = await createDatabase(owner());
  try {
    await restore({ databaseUrl: target.url, folder: backup, migrations: MIGRATIONS });
    await work(target.url);
  } finally {
    await target.drop();
  }
}

describe("a backup", () => {
  it("gives every row of every table back, in an empty database, and the watch over them too", async () => {
    await restored(made.path, async (databaseUrl) => {
      await expectEqualTables(databaseUrl);
      await withClient(databaseUrl, async (client) => {
        await expect(client.query("DELETE FROM audit_log")).rejects.toThrow("append-only");
        const { rowCount } = await client.query("SELECT FROM recipe");
        expect(rowCount).toBe(0);
      });
    });
  });

  it("goes on counting where the numbers of the log of deeds stood", async () => {
    await restored(made.path, async (databaseUrl) => {
      const last = await withClient(databaseUrl, async (client) => {
        await client.query("INSERT INTO audit_log (action, outcome) VALUES ('account', 'ok')");
        const { rows } = await client.query<{ id: string; count: string }>(
          "SELECT max(id) AS id, count(DISTINCT id) AS count FROM audit_log",
        );
        return rows[0];
      });
      const { audit_log: before } = await contentOf(owner());
      expect(before).toMatchObject({ rows: Number(last?.count) - 1 });
    });
  });

  it("puts the photos into the store that there is then", async () => {
    const keys = await blobsOf(member.spaceId).list();
    expect(keys).toHaveLength(2);
    vi.stubEnv("BLOB_FOLDER", join(folder, "another store"));
    try {
      await restored(made.path, () => Promise.resolve());
      expect(await blobsOf(member.spaceId).list()).toEqual(keys);
    } finally {
      vi.stubEnv("BLOB_FOLDER", join(folder, "store"));
    }
  });

  it("is readable by its owner alone, and no unfinished one is left", async () => {
    expect(await readdir(join(folder, "backups"))).toEqual(["2026-03-01T03-00-00-000Z"]);
    expect((await stat(made.path)).mode & 0o777).toBe(0o700);
    expect(made).toMatchObject({ format: "rows", photos: 2 });
  });

  it("is refused where the user does not see past row-level security, instead of being empty", async () => {
    await expect(backUp(order({ databaseUrl: owner() }))).rejects.toThrow(
      "CREATE ROLE gylebook_backup LOGIN BYPASSRLS",
    );
    expect(await readdir(join(folder, "backups"))).toEqual(["2026-03-01T03-00-00-000Z"]);
  });

  it.skipIf(pgDump === null)(
    "is written and restored by PostgreSQL's own programs, where they are as new as the server",
    async () => {
      const dumped = await backUp(order({ folder: join(folder, "dumps"), format: "dump" }));
      expect(dumped.format).toBe("dump");
      await restored(dumped.path, expectEqualTables);
    },
  );
});

describe("restoring", () => {
  it("leaves a database with rows alone", async () => {
    const before = await contentOf(owner());
    const order = { databaseUrl: owner(), folder: made.path, migrations: MIGRATIONS };
    await expect(restore(order)).rejects.toThrow(/^The database is not empty: \w+ has rows\./);
    expect(await contentOf(owner())).toEqual(before);
  });

  it("refuses a backup of which a byte was changed, a file taken away or one added", async () => {
    const target = await createDatabase(owner());
    const copy = join(folder, "copy");
    const attempt = () => restore({ databaseUrl: target.url, folder: copy, migrations: MIGRATIONS });
    try {
      await cp(made.path, copy, { recursive: true });
      await appendFile(join(copy, "tables", "app_user.ndjson.gz"), "x");
      await expect(attempt()).rejects.toThrow(
        `tables/app_user.ndjson.gz in the backup ${copy} is not what was written`,
      );
      await rm(join(copy, "tables", "app_user.ndjson.gz"));
      await expect(attempt()).rejects.toThrow(`tables/app_user.ndjson.gz is missing from the backup ${copy}`);
      await cp(made.path, copy, { recursive: true });
      await writeFile(join(copy, "tables", "more.ndjson.gz"), "");
      await expect(attempt()).rejects.toThrow("tables/more.ndjson.gz does not belong to the backup");
      expect(await contentOf(target.url)).toEqual({});
    } finally {
      await target.drop();
    }
  });

  it("leaves no row behind when a table does not compare, though every sum was made to fit", async () => {
    const target = await createDatabase(owner());
    const copy = join(folder, "forged");
    await cp(made.path, copy, { recursive: true });
    const file = join(copy, "tables", "app_user.ndjson.gz");
    const forged = gunzipSync(await readFile(file))
      .toString()
      .replace("Olga Organiser", "Somebody else");
    await writeFile(file, gzipSync(forged));
    await rewriteSums(copy);
    try {
      const order = { databaseUrl: target.url, folder: copy, migrations: MIGRATIONS };
      await expect(restore(order)).rejects.toThrow(/^What was restored is not what was backed up: app_user \(/);
      expect(await contentOf(target.url)).toMatchObject({ app_user: { rows: 0 }, brew: { rows: 0 } });
    } finally {
      await target.drop();
    }
  });
});

/** As somebody would who changes a backup and knows how its sums are made. */
async function rewriteSums(backup: string): Promise<void> {
  const sums = await readFile(join(backup, "SHA256SUMS"), "utf8");
  const lines = sums
    .trimEnd()
    .split("\n")
    .map(async (line) => {
      const name = line.slice(66);
      return `${createHash("sha256")
        .update(await readFile(join(backup, name)))
        .digest("hex")}  ${name}\n`;
    });
  await writeFile(join(backup, "SHA256SUMS"), (await Promise.all(lines)).join(""));
}

describe("rotation", () => {
  it("removes the oldest beyond those that are kept, and shares the photos with the one before", async () => {
    const second = await backUp(order({ now: new Date("2026-03-02T03:00:00Z") }));
    expect(second.removed).toEqual([]);
    const third = await backUp(order({ now: new Date("2026-03-03T03:00:00Z") }));
    expect(third.removed).toEqual(["2026-03-01T03-00-00-000Z"]);
    expect(third.photos).toBe(made.photos);
    expect(await readdir(join(folder, "backups"))).toEqual(["2026-03-02T03-00-00-000Z", "2026-03-03T03-00-00-000Z"]);
    await restored(third.path, () => Promise.resolve());
  });
});
