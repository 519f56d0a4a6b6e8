import "server-only";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";

const FOLDER = join(process.cwd(), ".build", "brew-day");

const list = z.object({ version: z.string(), script: z.string(), style: z.string(), files: z.array(z.string()) });
export type DayFiles = z.output<typeof list>;

/** What `lib/ops/build-day.mjs` has built. */
export async function dayFiles(): Promise<DayFiles> {
  return list.parse(JSON.parse(await readFile(join(FOLDER, "files.json"), "utf8")));
}

/** The worker that keeps the page on a device. */
export function dayWorker(): Promise<Buffer> {
  return readFile(join(FOLDER, "sw.js"));
}

const ENCODINGS = [
  { name: "br", ending: ".br" },
  { name: "gzip", ending: ".gz" },
] as const;

export interface BuiltFile {
  readonly content: Buffer;
  readonly type: string;
  readonly encoding: string | null;
}

/** One built file, in the best form that the reader takes; null for a name that is not of the list. */
export async function dayFile(name: string, accepted: string): Promise<BuiltFile | null> {
  const { files } = await dayFiles();
  // Only names of the list reach the disk.
  if (!files.includes(name)) return null;
  const type = name.endsWith(".css") ? "text/css; charset=utf-8" : "text/javascript; charset=utf-8";
  const encoding = ENCODINGS.find((each) => accepted.split(/[\s,;]+/).includes(each.name));
  const content = await readFile(join(FOLDER, `${name}${encoding?.ending ?? ""}`));
  return { content, type, encoding: encoding?.name ?? null };
}
