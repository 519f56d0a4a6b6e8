/**
 * `npm run restore -- <backup>`: restores a backup into an empty database and compares every table with it.
 */
import { reachDatabase } from "./open-database.mjs";
import { ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { runTypescript } from "./run.mjs";
import { runCommand } from "./run-command.mjs";

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  await ensureClient();
  const database = await reachDatabase({ mayShare: false });
  const env = { ...process.env, DATABASE_URL: process.env.DATABASE_DIRECT_URL || database.url };
  return runTypescript("lib/ops/restore-backup.ts", process.argv.slice(2), env);
});
