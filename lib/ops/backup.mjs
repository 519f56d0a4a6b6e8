/**
 * `npm run backup`: copies the database and the photos, while they are used.
 *
 *   npm run backup -- --folder=/srv/backups --keep=30 --format=dump
 */
import { reachDatabase } from "./open-database.mjs";
import { ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { runTypescript } from "./run.mjs";
import { runCommand } from "./run-command.mjs";

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  await ensureClient();
  const database = await reachDatabase({ mayShare: true });
  const reader =
    process.env.BACKUP_DATABASE_URL || database.superuserUrl || process.env.DATABASE_DIRECT_URL || database.url;
  const env = { ...process.env, DATABASE_URL: database.url, BACKUP_DATABASE_URL: reader };
  return runTypescript("lib/ops/make-backup.ts", process.argv.slice(2), env);
});
