import "server-only";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";

/** The pages that devices keep. */
export type KeptPage = "brew-day" | "judging";

const folderOf = (page: KeptPage): string => join(process.cwd(), ".build", page);

const list = z.object({ version: z.string(), script: z.string(), style: z.string(), files: z.array(z.string()) });
export type DayFiles = z.output<typeof list>;

/** What `lib/ops/build-day.mjs` has built. */
export async function dayFiles(page: KeptPage): Promise<DayFiles> {
  return list.parse(JSON.parse(await readFile(join(folderOf(page), "files.json"), "utf8")));
}

/** The worker that keeps the page on a device. */
export function dayWorker(page: KeptPage): Promise<Buffer> {
  return readFile(join(folderOf(page), "sw.js"));
}

export interface BuiltFile {
  readonly content: Buffer;
  readonly type: string;
}

/** One built file; null for a name that is not of the list. The server in front compresses what it sends. */
export async function dayFile(page: KeptPage, name: string): Promise<BuiltFile | null> {
  const { files } = await dayFiles(page);
  // Only names of the list reach the disk.
  if (!files.includes(name)) return null;
  const type = name.endsWith(".css") ? "text/css; charset=utf-8" : "text/javascript; charset=utf-8";
  return { content: await readFile(join(folderOf(page), name)), type };
}
