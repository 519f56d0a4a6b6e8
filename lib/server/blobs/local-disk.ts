import "server-only";
import { randomUUID } from "node:crypto";
import { mkdir, open, readdir, readFile, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import { requireKey, requireSpace, type Blobs } from "./blobs";

/**
 * Blobs of a space as files of one folder. A file is written beside its name and then moved there, so that whoever reads
 * finds all of it or nothing, also after the power went.
 */
export function localDiskBlobs(root: string, spaceId: string): Blobs {
  const folder = join(root, requireSpace(spaceId));
  const pathOf = (key: string): string => join(folder, requireKey(key));
  return {
    async put(key, bytes) {
      const path = pathOf(key);
      await mkdir(folder, { recursive: true });
      await writeWholly(path, bytes);
    },
    async get(key) {
      return orNull(async () => new Uint8Array(await readFile(pathOf(key))));
    },
    async delete(key) {
      await rm(pathOf(key), { force: true });
    },
    async list() {
      const names = (await orNull(() => readdir(folder))) ?? [];
      return names.filter((name) => !name.includes(".")).sort();
    },
  };
}

async function writeWholly(path: string, bytes: Uint8Array): Promise<void> {
  const beside = `${path}.${randomUUID()}`;
  try {
    const file = await open(beside, "wx", 0o600);
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
}

async function orNull<T>(read: () => Promise<T>): Promise<T | null> {
  try {
    return await read();
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return null;
    throw error;
  }
}
