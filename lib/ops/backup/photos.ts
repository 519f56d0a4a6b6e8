import { createHash } from "node:crypto";
import { copyFile, link, mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Client } from "pg";
import { blobsOf } from "@/lib/server/blobs/open-blobs";
import { Refusal } from "../refusal.mjs";
import type { Photo } from "./manifest";

const FOLDER = "photos";

/** The photos that rows of the snapshot name, in both of their sizes. */
export async function readPhotos(client: Client): Promise<readonly Photo[]> {
  const { rows } = await client.query<Photo>(
    `SELECT space_id::text AS "spaceId", encode(hash, 'hex') AS key, min(mime) AS mime
     FROM attachment, LATERAL (VALUES (sha256), (thumb_sha256)) AS bytes (hash)
     WHERE hash IS NOT NULL GROUP BY 1, 2 ORDER BY 1, 2`,
  );
  return rows;
}

interface Copied {
  readonly photos: readonly Photo[];
  readonly missing: number;
}

/**
 * Copies photos out of the store, whichever it is. A photo that the backup before has too is not fetched again: it is the
 * same file under two names, which goes when the last of them is removed.
 */
export async function copyPhotos(wanted: readonly Photo[], folder: string, before: string | null): Promise<Copied> {
  const photos: Photo[] = [];
  for (const photo of wanted) {
    await mkdir(join(folder, FOLDER, photo.spaceId), { recursive: true });
    const path = pathOf(folder, photo);
    if (before !== null && (await shareFile(pathOf(before, photo), path))) {
      photos.push(photo);
      continue;
    }
    const bytes = await blobsOf(photo.spaceId).get(photo.key);
    if (bytes === null) continue;
    requireBytes(photo, bytes);
    await writeFile(path, bytes, { mode: 0o600 });
    photos.push(photo);
  }
  return { photos, missing: wanted.length - photos.length };
}

async function shareFile(from: string, to: string): Promise<boolean> {
  try {
    const bytes = await readFile(from);
    if (createHash("sha256").update(bytes).digest("hex") !== to.slice(-64)) return false;
    // Some file systems know one name for a file only.
    await link(from, to).catch(() => copyFile(from, to));
    return true;
  } catch {
    return false;
  }
}

/** Puts photos into the store that this installation is set up with; the same ones again change nothing. */
export async function loadPhotos(photos: readonly Photo[], folder: string): Promise<void> {
  for (const photo of photos) {
    const bytes = new Uint8Array(await readFile(pathOf(folder, photo)));
    requireBytes(photo, bytes);
    await blobsOf(photo.spaceId).put(photo.key, bytes, photo.mime);
  }
}

function requireBytes({ key }: Photo, bytes: Uint8Array): void {
  if (createHash("sha256").update(bytes).digest("hex") === key) return;
  throw new Refusal(`The photo ${key} is not the one that its name says: it is damaged in the store or the backup.`);
}

function pathOf(folder: string, { spaceId, key }: Photo): string {
  return join(folder, FOLDER, spaceId, key);
}
