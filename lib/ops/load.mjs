/**
 * `npm run load`: a federation of a thousand clubs is generated, and the pages and writes that clubs use most are measured
 * in one of them: against a bare handler with the same queries, against the same club alone, with one and two processes.
 *
 * `npm run load -- --clubs=100 --rounds=40 --seconds=3` is a smaller and quicker run; `--soak=600` looks at the memory of
 * a process over ten minutes of everything at once; `--seed=2` makes other identifiers.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { startThrowAwayDatabase } from "./embedded-database.mjs";
import { freePort } from "./free-port.mjs";
import { migrate } from "./open-database.mjs";
import { ensureBuild, ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { run, step, typescriptCommand } from "./run.mjs";
import { runCommand } from "./run-command.mjs";
import { passingEnvironment, serve } from "./server.mjs";
import { onShutdown } from "./shutdown.mjs";

const USUAL = { clubs: 1000, rounds: 200, seconds: 8, soak: 0, seed: 1 };
/** As a server is set up that takes much, and with a log from which the recordings are read. It keeps what it confirms. */
const FLAGS = [
  "-c max_wal_size=8GB",
  "-c maintenance_work_mem=256MB",
  "-c logging_collector=on",
  "-c log_destination=jsonlog",
];

await runCommand(async () => {
  requireNode();
  const asked = readSizes();
  await ensurePackages();
  await ensureClient();
  await ensureBuild();
  const database = await startThrowAwayDatabase("gylebook", { flags: FLAGS });
  onShutdown(database.stop);
  await migrate(database.url);
  const measured = Math.ceil(asked.clubs / 2);
  await fill(database, { ...asked, measured });
  return measure(database, { ...asked, slug: `club-${measured}` });
});

function readSizes() {
  const options = Object.fromEntries(
    Object.entries(USUAL).map(([name, usual]) => [name, { type: "string", default: String(usual) }]),
  );
  const { values } = parseArgs({ options });
  return Object.fromEntries(
    Object.entries(values).map(([name, text]) => {
      const least = name === "soak" ? 0 : 1;
      const number = Number(text);
      if (Number.isInteger(number) && number >= least) return [name, number];
      throw new Refusal(`--${name}=${text} is no whole number from ${least}.`);
    }),
  );
}

async function fill({ url, superuserUrl }, { clubs, seed, measured }) {
  const env = passingEnvironment({ databaseUrl: url, origin: "http://localhost" });
  await step("Filling it with the demo club", ...typescriptCommand("lib/ops/seed.ts"), { env });
  const wanted = JSON.stringify({ superuserUrl, clubs, seed, measured });
  const command = typescriptCommand("tests/bench/federation.ts");
  const told = await step("Making the federation", ...command, { env: { ...env, GYLEBOOK_FEDERATION: wanted } });
  console.log(told.trimEnd());
}

async function measure({ url, superuserUrl }, { rounds, seconds, soak, slug }) {
  const at = (address, name) => address.replace(/\/[^/]*$/, `/${name}`);
  const ports = [];
  for (let i = 0; i < 4; i += 1) ports.push(await freePort());
  const [smallPort, floorPort, ...largePorts] = ports;
  const origin = `http://localhost:${largePorts[0]}`;
  const folder = await mkdtemp(join(tmpdir(), "gylebook-load-"));
  onShutdown(() => rm(folder, { recursive: true, force: true }));
  const probe = { file: join(folder, "heap.json") };
  const large = passingEnvironment({ databaseUrl: at(url, "large"), origin });
  const small = { ...large, DATABASE_URL: at(url, "small") };
  const watched = {
    NODE_OPTIONS: `--import ${new URL("../../tests/bench/load/heap-probe.mjs", import.meta.url).href}`,
    GYLEBOOK_HEAP_FILE: probe.file,
  };
  await serve({ host: "127.0.0.1", port: smallPort, env: small });
  const { pid } = await serve({ host: "127.0.0.1", port: largePorts[0], env: { ...large, ...watched } });
  await serve({ host: "127.0.0.1", port: largePorts[1], env: large });
  const setting = {
    small: { superuserUrl: at(superuserUrl, "small"), url: at(url, "small"), port: smallPort },
    large: { superuserUrl: at(superuserUrl, "large"), url: at(url, "large"), ports: largePorts },
    ...{ floorPort, origin, slug, rounds, seconds, soak, probe: { ...probe, pid } },
  };
  const env = { ...large, GYLEBOOK_LOAD: JSON.stringify(setting) };
  const { code } = await run(...typescriptCommand("tests/bench/load.ts"), { cwd: ROOT, env, show: true });
  return code;
}
