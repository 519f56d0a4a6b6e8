/** The database for a developer: `npm run db` starts it, brings it up to date and keeps it until Ctrl+C. */
import { once } from "node:events";
import { openDatabase } from "./open-database.mjs";
import { ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { runCommand } from "./refusal.mjs";

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  await ensureClient();
  const database = await openDatabase();
  console.log(`export DATABASE_URL=${database.url}`);
  const awake = setInterval(() => undefined, 60_000);
  await Promise.race([once(process, "SIGINT"), once(process, "SIGTERM")]);
  clearInterval(awake);
  await database.stop();
});
