/** `npm start`: everything from a fresh copy to an address that answers. */
import { openDatabase } from "./open-database.mjs";
import { ensureBuild, ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { Refusal } from "./refusal.mjs";
import { step, typescriptCommand } from "./run.mjs";
import { runCommand } from "./run-command.mjs";
import { requireFreePort, serve, serverEnvironment } from "./server.mjs";

await runCommand(async () => {
  requireNode();
  const port = Number(process.env.PORT || 3000);
  // Only this machine, unless somebody decides otherwise: the passwords of the demo club are no secret.
  const host = process.env.HOST || "127.0.0.1";
  await requireFreePort(port, host);
  await ensurePackages();
  await ensureClient();
  const database = await openDatabase({ mayShare: false });
  const env = await serverEnvironment({ databaseUrl: database.url, port });
  await step("Erasing what closed accounts left to nobody", ...typescriptCommand("lib/ops/erase.ts"), { env });
  const signIns = await step(
    "Looking for the demo club, or filling an empty database with it",
    ...typescriptCommand("lib/ops/seed.ts"),
    { env },
  );
  await ensureBuild();
  const server = await serve({ host, port, env });
  console.log(`\nGylebook answers at ${env.APP_ORIGIN}\n${signIns.trim()}\nStop it with Ctrl+C.`);
  await server.ended;
  throw new Refusal("The server ended by itself; what it said stands above.");
});
