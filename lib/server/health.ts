import "server-only";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { setTimeout as delay } from "node:timers/promises";
import { directory } from "./db";
import { operations } from "./operations";

const PATIENCE_MS = 500;

export type Readiness = "ready" | "draining" | "no database" | "old database";

/** Whether this server should get requests: it is not about to end, and a database of its own version or later answers. */
export async function readiness(): Promise<Readiness> {
  if (operations()?.isDraining === true) return "draining";
  const asked = newestApplied().then(
    (isThere) => (isThere ? "ready" : "old database"),
    () => "no database" as const,
  );
  return Promise.race([asked, delay(PATIENCE_MS, "no database" as const, { ref: false })]);
}

let newest: Promise<string> | undefined;

/** The last migration that this version came with; a database may have later ones, of the next version. */
async function newestMigration(): Promise<string> {
  const entries = await readdir(join(process.cwd(), "prisma", "migrations"), { withFileTypes: true });
  const names = entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
  return names.sort().at(-1) ?? "";
}

async function newestApplied(): Promise<boolean> {
  const name = await (newest ??= newestMigration());
  const [row] = await directory.$queryRaw<{ applied: boolean }[]>`SELECT is_migrated(${name}) AS applied`;
  return row?.applied === true;
}
