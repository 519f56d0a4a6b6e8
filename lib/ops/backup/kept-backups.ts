import { existsSync } from "node:fs";
import { readdir, rm } from "node:fs/promises";
import { join } from "node:path";

const NAME = /^\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d-\d{3}Z$/;

/** The name of a backup is when it was begun, so that names sort by age. */
export function nameOfBackup(at: Date): string {
  return at.toISOString().replaceAll(":", "-").replace(".", "-");
}

/** Whole backups in a folder, the oldest first; an unfinished one has another name. */
export async function listBackups(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder).catch(() => []);
  return names.filter((name) => NAME.test(name) && existsSync(join(folder, name, "SHA256SUMS"))).sort();
}

/** Removes the oldest backups until so many are left, and what interrupted ones left behind; says which went. */
export async function rotate(folder: string, keep: number): Promise<readonly string[]> {
  const whole = await listBackups(folder);
  const gone = whole.slice(0, Math.max(0, whole.length - keep));
  for (const name of gone) await rm(join(folder, name), { recursive: true });
  return gone;
}
