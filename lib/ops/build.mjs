/** `npm run build`: everything that `npm run serve` serves. It needs no database and no secret. */
import { ensureBuild, ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { runCommand } from "./run-command.mjs";

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  await ensureClient();
  await ensureBuild();
});
