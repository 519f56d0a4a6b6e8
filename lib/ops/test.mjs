/**
 * `npm test`: every check and every test, with a database, a build and a server of its own.
 * `npm test -- check`, `unit`, `server` or `browser` runs only these parts.
 */
import { runChecks } from "./checks.mjs";
import { ensureChromium } from "./chromium.mjs";
import { startThrowAwayDatabase } from "./embedded-database.mjs";
import { freePort } from "./free-port.mjs";
import { migrate } from "./open-database.mjs";
import { ensureBuild, ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { Refusal } from "./refusal.mjs";
import { step, typescriptCommand } from "./run.mjs";
import { runCommand } from "./run-command.mjs";
import { passingEnvironment, serve } from "./server.mjs";
import { onShutdown } from "./shutdown.mjs";
import { summarise } from "./summary.mjs";
import { runPlaywright, runVitest } from "./test-runs.mjs";

let started;

const PARTS = {
  check: runChecks,
  unit: async () => [await runVitest("unit")],
  server: async (database) => {
    const { url, superuserUrl } = await database();
    return [await runVitest("server", { ...process.env, DATABASE_URL_TEST: url, SUPERUSER_URL_TEST: superuserUrl })];
  },
  browser: async (database) => [await runInBrowser(await database())],
};

await runCommand(
  async () => {
    requireNode();
    const chosen = chooseParts(process.argv.slice(2));
    await ensurePackages();
    await ensureClient();
    const results = [];
    for (const name of chosen) results.push(...(await runPart(name)));
    return summarise(results);
  },
  { codeOfSignal: 130 },
);

function chooseParts(asked) {
  const known = Object.keys(PARTS);
  const wrong = asked.find((name) => !known.includes(name));
  if (wrong !== undefined) throw new Refusal(`There are no tests called ${wrong}: choose among ${known.join(", ")}.`);
  return asked.length === 0 ? known : known.filter((name) => asked.includes(name));
}

/** What keeps a part from running is one failure of it; the others still run. */
async function runPart(name) {
  try {
    return await PARTS[name](sharedDatabase);
  } catch (error) {
    console.error(error instanceof Refusal ? error.message : error);
    return [{ name: `${name}: could not run`, passed: 0, failed: 1 }];
  }
}

function sharedDatabase() {
  started ??= startDatabase();
  return started;
}

async function startDatabase() {
  console.log("\nStarting a database for the tests …");
  const database = await startThrowAwayDatabase("gylebook");
  onShutdown(database.stop);
  return database;
}

async function runInBrowser(database) {
  const chromium = await ensureChromium();
  const port = await freePort();
  await migrate(database.url);
  const env = passingEnvironment({ databaseUrl: database.url, origin: `http://localhost:${port}` });
  await step("Filling it with the demo club", ...typescriptCommand("lib/ops/seed.ts"), { env });
  await ensureBuild();
  await serve({ host: "127.0.0.1", port, env });
  return runPlaywright({ ...env, CHROMIUM_PATH: chromium, GYLEBOOK_URL: env.APP_ORIGIN });
}
