/**
 * `npm run serve`: only the server, for an installation that is looked after: the pages are built, the database is
 * somebody's at DATABASE_URL and migrated, the settings are all given. Several may run side by side.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { requireNode } from "./prepare.mjs";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { runCommand } from "./run-command.mjs";
import { requireFreePort, serve } from "./server.mjs";

await runCommand(async () => {
  requireNode();
  for (const name of ["DATABASE_URL", "APP_ORIGIN", "NEXTAUTH_SECRET"]) {
    if ((process.env[name] ?? "") === "") throw new Refusal(`Set ${name}: npm run serve takes nothing for granted.`);
  }
  if (!existsSync(join(ROOT, ".next", "BUILD_ID"))) throw new Refusal("There are no built pages: npm run build.");
  const port = Number(process.env.PORT || 3000);
  const host = process.env.HOST || "127.0.0.1";
  await requireFreePort(port, host);
  const env = {
    GYLEBOOK_LOG: "json",
    NEXTAUTH_URL: process.env.APP_ORIGIN,
    ...process.env,
    NEXT_TELEMETRY_DISABLED: "1",
  };
  const server = await serve({ host, port, env });
  console.log(JSON.stringify({ ts: new Date().toISOString(), level: "info", event: "serving", host, port }));
  await server.ended;
  throw new Refusal("The server ended by itself; what it said stands above.");
});
