/** `npm run dev`: the database and Next's development server, which shows changes at once. */
import { join } from "node:path";
import { ensureDay } from "./build-day.mjs";
import { openDatabase } from "./open-database.mjs";
import { ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { ROOT } from "./project-root.mjs";
import { start, step, typescriptCommand } from "./run.mjs";
import { runCommand } from "./run-command.mjs";
import { requireFreePort, serverEnvironment } from "./server.mjs";

await runCommand(async () => {
  requireNode();
  const port = Number(process.env.PORT || 3000);
  await requireFreePort(port, "127.0.0.1");
  await ensurePackages();
  await ensureClient();
  const database = await openDatabase({ mayShare: true });
  const env = await serverEnvironment({ databaseUrl: database.url, port });
  console.log(
    await step(
      "Looking for the demo club, or filling an empty database with it",
      ...typescriptCommand("lib/ops/seed.ts"),
      { env },
    ),
  );
  await ensureDay();
  const next = join(ROOT, "node_modules", "next", "dist", "bin", "next");
  const args = [next, "dev", "-H", "127.0.0.1", "-p", String(port)];
  const server = start(process.execPath, args, { env, stdio: ["ignore", "inherit", "inherit"] });
  return new Promise((resolve) => server.once("close", resolve));
});
