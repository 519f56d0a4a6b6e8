/** The database for a developer: `npm run db` starts it, brings it up to date and keeps it until Ctrl+C. */
import { openDatabase } from "./open-database.mjs";
import { ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { runCommand } from "./run-command.mjs";

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  await ensureClient();
  const database = await openDatabase({ mayShare: true });
  console.log(`export DATABASE_URL=${database.url}`);
  if (database.shared) return;
  await new Promise(() => setInterval(() => undefined, 60_000));
});
