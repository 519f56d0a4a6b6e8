/**
 * `npm run random-brews -- 100000`: the laws of ledger and adapt on that many random recipes and kettles, which takes
 * some tens of minutes. The tests of every day try a thousand.
 */
import { join } from "node:path";
import { ensurePackages, requireNode } from "./prepare.mjs";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { run } from "./run.mjs";
import { runCommand } from "./run-command.mjs";

const USUAL = 100_000;

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  const count = Number(process.argv[2] ?? USUAL);
  if (!Number.isInteger(count) || count < 1) {
    throw new Refusal(
      `Number of brews ${process.argv[2]} is no whole number from 1; try: npm run random-brews -- 1000`,
    );
  }
  const vitest = join(ROOT, "node_modules", "vitest", "vitest.mjs");
  const files = ["tests/calc/ledger/random-brews.test.ts", "tests/calc/adapt/random-kettles.test.ts"];
  const env = { ...process.env, GYLEBOOK_RANDOM_BREWS: String(count) };
  const { code } = await run(process.execPath, [vitest, "run", "--project", "unit", ...files], { env, show: true });
  return code;
});
