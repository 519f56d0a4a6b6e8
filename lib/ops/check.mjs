/** `npm run check`: the checking tools and the unit tests, without a database. */
import { runChecks } from "./checks.mjs";
import { ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { runCommand } from "./run-command.mjs";
import { summarise } from "./summary.mjs";
import { runVitest } from "./test-runs.mjs";

await runCommand(
  async () => {
    requireNode();
    await ensurePackages();
    await ensureClient();
    return summarise([...(await runChecks()), await runVitest("unit")]);
  },
  { codeOfSignal: 130 },
);
