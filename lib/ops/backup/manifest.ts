import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";
import { Refusal } from "../refusal.mjs";

const FORMAT = "gylebook-backup";
const VERSION = 1;
const MANIFEST = "manifest.json";
/** In the form that `sha256sum --check` reads, so that a backup can be looked at without this program. */
const SUMS = "SHA256SUMS";

const fingerprint = z.strictObject({
  rows: z.string().regex(/^\d+$/),
  /** The sum of a hash of each row, which does not depend on their order. */
  content: z.string().regex(/^-?\d+$/),
});

const backupManifest = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  madeAt: z.iso.datetime(),
  /** How the database is written: PostgreSQL's own custom format, or rows as this program writes them. */
  database: z.enum(["dump", "rows"]),
  server: z.string(),
  migrations: z.array(z.string()),
  tables: z.record(z.string().regex(/^[a-z_0-9]+$/), fingerprint),
  sequences: z.record(z.string().regex(/^[a-z_0-9]+$/), z.string().regex(/^\d+$/)),
  /** Photos of each space by the hash of their bytes, and those whose bytes were not in the store. */
  photos: z.array(z.strictObject({ spaceId: z.uuid(), key: z.string().regex(/^[0-9a-f]{64}$/), mime: z.string() })),
  missingPhotos: z.number().int().min(0),
});

export type BackupManifest = z.output<typeof backupManifest>;
export type Fingerprint = z.output<typeof fingerprint>;
export type Photo = BackupManifest["photos"][number];

/** Writes what the backup holds, and the sum of every file of it; the last thing that is written. */
export async function writeManifest(
  folder: string,
  manifest: Omit<BackupManifest, "format" | "version">,
): Promise<string> {
  await writeFile(
    join(folder, MANIFEST),
    `${JSON.stringify({ format: FORMAT, version: VERSION, ...manifest }, null, 1)}\n`,
  );
  const lines: string[] = [];
  for (const name of await filesOf(folder)) lines.push(`${await sumOf(join(folder, name))}  ${name}\n`);
  await writeFile(join(folder, SUMS), lines.join(""));
  return sumOf(join(folder, SUMS));
}

/** The manifest of a backup of which every file is there and as it was written; nothing else is looked at before. */
export async function readManifest(folder: string): Promise<BackupManifest> {
  const sums = await readFile(join(folder, SUMS), "utf8").catch(() => {
    throw new Refusal(`${folder} is no whole backup: there is no ${SUMS} in it.`);
  });
  const expected = new Map(sums.split("\n").flatMap((line) => (line === "" ? [] : [entryOf(line)])));
  const present = await filesOf(folder);
  const extra = present.find((name) => !expected.has(name));
  if (extra !== undefined) throw new Refusal(`${extra} does not belong to the backup ${folder}; nothing was restored.`);
  for (const [name, sum] of expected) {
    if (!present.includes(name))
      throw new Refusal(`${name} is missing from the backup ${folder}; nothing was restored.`);
    if ((await sumOf(join(folder, name))) === sum) continue;
    throw new Refusal(`${name} in the backup ${folder} is not what was written; nothing was restored.`);
  }
  const parsed = backupManifest.safeParse(JSON.parse(await readFile(join(folder, MANIFEST), "utf8")));
  if (parsed.success) return parsed.data;
  throw new Refusal(`The backup ${folder} is of another form than this version of Gylebook reads.`);
}

function entryOf(line: string): readonly [string, string] {
  const [, sum = "", name = ""] = /^([0-9a-f]{64}) {2}(.+)$/.exec(line) ?? [];
  if (name === "") throw new Refusal(`${SUMS} has a line that is no checksum; nothing was restored.`);
  return [name, sum];
}

async function filesOf(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && entry.name !== SUMS)
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort();
}

async function sumOf(path: string): Promise<string> {
  const hash = createHash("sha256");
  for await (const chunk of createReadStream(path)) hash.update(chunk as Buffer);
  return hash.digest("hex");
}
