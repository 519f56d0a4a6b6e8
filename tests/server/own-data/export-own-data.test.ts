import { createHash, randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { z } from "zod";
import { CLUB_PARTS } from "@/lib/model/club-file/parts";
import { directory } from "@/lib/server/db";
import { exportOwnData } from "@/lib/server/member-file/export-member";
import { PERSON_COLUMNS } from "@/lib/server/member-file/own-rows";
import { findPhoto } from "@/lib/server/photos/reads";
import { keepPhoto } from "@/lib/server/photos/writes";
import type { Viewer } from "@/lib/server/session";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";
import { gpsJpeg } from "../../support/pictures";
import { withClient } from "../../support/open-client";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "gylebook-own-data-"));
  vi.stubEnv("BLOB_FOLDER", folder);
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await rm(folder, { recursive: true });
});

const ownData = z.object({
  format: z.literal("gylebook-own-data"),
  account: z.object({ emailNorm: z.string(), displayName: z.string() }),
  deeds: z.array(z.object({ action: z.string() })),
  spaces: z.array(
    z.object({
      id: z.string(),
      name: z.string(),
      rows: z.array(z.object({ table: z.string(), row: z.record(z.string(), z.unknown()) })),
      photos: z.array(z.object({ id: z.string(), mime: z.string(), base64: z.string() })),
    }),
  ),
});

async function exported(viewer: Viewer): Promise<{ readonly text: string; readonly file: z.output<typeof ownData> }> {
  let text = "";
  for await (const piece of await exportOwnData(viewer, new Date())) text += piece;
  return { text, file: ownData.parse(JSON.parse(text)) };
}

describe("one's own data", () => {
  it("are what one wrote in every club and on the bench, with photos, and nothing that others wrote", async () => {
    const { organiser, member } = await newClub("member");
    const own = await newBrewing(organiser, member);
    const other = await newBrewing(organiser, organiser);
    const photo = randomUUID();
    await keepPhoto(member, { id: photo, brewId: own.brewId, bytes: await gpsJpeg() });
    await keepPhoto(organiser, { id: randomUUID(), brewId: own.brewId, bytes: await gpsJpeg(3) });
    const { file } = await exported(member);
    expect(file.spaces.map(({ name }) => name)).toEqual(expect.arrayContaining(["My bench", member.spaceName]));
    const club = file.spaces.find(({ id }) => id === member.spaceId);
    const tables = new Set(club?.rows.map(({ table }) => table));
    for (const table of ["brew", "equipment", "equipment_revision", "attachment", "shared_brew_participant"]) {
      expect(tables, table).toContain(table);
    }
    const ids = club?.rows.map(({ row }) => row.id);
    expect(ids).toEqual(expect.arrayContaining([own.brewId, own.equipmentId, photo]));
    expect(ids).not.toContain(other.brewId);
    expect(tables).not.toContain("recipe");
    const [kept, ...more] = club?.photos ?? [];
    expect(more).toEqual([]);
    const served = await findPhoto(member, { brewId: own.brewId, id: photo, size: "whole" });
    const hash = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
    expect(hash(Buffer.from(kept?.base64 ?? "", "base64"))).toBe(hash(served?.bytes ?? new Uint8Array()));
  });

  it("are told of a club that was left, too", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId } = await newBrewing(organiser, member);
    const { spaceId, userId } = member;
    await directory.membership.update({ where: { spaceId_userId: { spaceId, userId } }, data: { status: "left" } });
    const { text } = await exported(member);
    expect(text).toContain(brewId);
  });

  it("hold no secret: no password, no session, no key", async () => {
    const { member } = await newClub("member");
    const { text, file } = await exported(member);
    expect(text).not.toMatch(/argon2|password_?hash|token_?hash/i);
    expect(file.deeds.map(({ action }) => action)).toContain("account");
    expect(await directory.auditLog.count({ where: { actor: member.userId, action: "own data" } })).toBe(1);
  });
});

/** Identifiers of things, not of people. */
const OF_THINGS = [
  ...["id", "key", "replaces", "space_id", "source_space_id", "origin_space_id", "origin_recipe_id", "recipe_root"],
  ...["recipe_id", "root_id", "equipment_id", "shared_brew_id", "brew_id", "event_id", "target_id", "device_id"],
  ...[
    "item_id",
    "from_item_id",
    "to_item_id",
    "round_id",
    "lot_id",
    "trial_id",
    "vessel_id",
    "import_id",
    "tasting_id",
  ],
];

describe("columns that name people", () => {
  it("are known, every one of them: a column with an identifier names a thing or is in the list", async () => {
    const columns = await withClient(process.env.DATABASE_URL ?? "", async (client) => {
      const { rows } = await client.query<{ table: string; column: string }>(
        `SELECT c.relname AS table, a.attname AS column FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
         WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND c.relrowsecurity
           AND a.atttypid = 'uuid'::regtype AND NOT a.attisdropped AND a.attnum > 0`,
      );
      return rows;
    });
    const known: readonly string[] = [...PERSON_COLUMNS, ...OF_THINGS];
    const unknown = columns.filter(({ column }) => !known.includes(column));
    expect(unknown).toEqual([]);
  });

  it("are at least those by which the file of a club names people", () => {
    const known: readonly string[] = [...PERSON_COLUMNS, "id"];
    for (const { table, people } of CLUB_PARTS) expect(known, table).toEqual(expect.arrayContaining([...people]));
  });
});
