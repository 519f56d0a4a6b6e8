/** Restores one backup into the database at DATABASE_URL; `npm run restore` calls it. */
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { restore } from "./backup/restore";
import { Refusal } from "./refusal.mjs";

const migrations = fileURLToPath(new URL("../../prisma/migrations", import.meta.url));

async function restoreBackup(): Promise<string> {
  const { positionals } = parseArgs({ allowPositionals: true });
  const [backup] = positionals;
  if (backup === undefined || positionals.length > 1) {
    throw new Refusal("Name one backup: npm run restore -- .data/backups/2026-01-31T03-00-00-000Z");
  }
  const databaseUrl = process.env.DATABASE_URL ?? "";
  const { tables, photos, madeAt } = await restore({ databaseUrl, folder: resolve(backup), migrations });
  const lines = Object.entries(tables).map(
    ([name, { rows }]) => `  ${name.padEnd(32)} ${rows.padStart(9)} rows, equal`,
  );
  return `Restored what was backed up on ${madeAt}, and ${photos.length} photos. Every table was compared:\n${lines.join("\n")}`;
}

try {
  console.log(await restoreBackup());
} catch (error) {
  console.error(error instanceof Refusal ? error.message : error);
  process.exitCode = 1;
}
