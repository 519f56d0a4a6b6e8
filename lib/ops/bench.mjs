/**
 * `npm run bench`: how fast the calculation and the pages are, as ratios within one run.
 * `npm run bench -- calculation pages` runs these parts alone; the others are learning, statistics, search, comparison,
 * keystrokes, kettles, ingestion, brew-day, judging and vitals.
 */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startThrowAwayDatabase } from "./embedded-database.mjs";
import { freePort } from "./free-port.mjs";
import { migrate } from "./open-database.mjs";
import { buildWithBench, ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { run, step, typescriptCommand } from "./run.mjs";
import { runCommand } from "./run-command.mjs";
import { passingEnvironment, serve } from "./server.mjs";
import { onShutdown } from "./shutdown.mjs";

// Each against the built app, in a demo club of its own.
// What writes the most comes last.
const SERVED = ["pages", "vitals", "keystrokes", "kettles", "brew-day", "judging", "ingestion"];
const PARTS = ["calculation", "learning", "statistics", "search", "comparison", ...SERVED];

await runCommand(async () => {
  requireNode();
  await ensurePackages();
  await ensureClient();
  const asked = process.argv.slice(2);
  const unknown = asked.find((part) => !PARTS.includes(part));
  if (unknown !== undefined) throw new Refusal(`There is no part ${unknown}: it is one of ${PARTS.join(", ")}.`);
  const isWanted = (part) => asked.length === 0 || asked.includes(part);
  if (isWanted("calculation")) await benchBundled("calculation");
  if (isWanted("learning")) await benchBundled("learning");
  if (isWanted("statistics")) await benchBundled("statistics");
  if (isWanted("search")) await benchSearch();
  if (isWanted("comparison")) await benchComparison();
  const served = SERVED.filter(isWanted);
  if (served.length > 0) await benchServed(served);
});

/** Bundled first: run from source, every call would carry what the loader adds to it. */
async function benchBundled(part) {
  const { build } = await import("esbuild");
  const folder = await mkdtemp(join(tmpdir(), "gylebook-bench-"));
  try {
    const outfile = join(folder, `${part}.mjs`);
    const entry = join(ROOT, "tests", "bench", `${part}.ts`);
    const alias = { "@": ROOT };
    await build({ entryPoints: [entry], outfile, alias, bundle: true, platform: "node", format: "esm" });
    await run(process.execPath, [outfile], { show: true });
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** In a database of its own, because 100 000 recipes would be in the way of everything else. */
async function benchSearch() {
  const database = await startThrowAwayDatabase("gylebook");
  onShutdown(database.stop);
  await migrate(database.url);
  const env = { ...process.env, DATABASE_URL: database.url };
  await run(...typescriptCommand("tests/bench/search.ts"), { env, show: true });
}

/** In a database of its own as well, which holds the demo club and a million readings. */
async function benchComparison() {
  const database = await startThrowAwayDatabase("gylebook");
  onShutdown(database.stop);
  await migrate(database.url);
  const env = passingEnvironment({ databaseUrl: database.url, origin: "http://localhost" });
  await step("Filling it with the demo club", ...typescriptCommand("lib/ops/seed.ts"), { env });
  await run(...typescriptCommand("tests/bench/comparison.ts"), { env, show: true });
}

async function benchServed(parts) {
  const database = await startThrowAwayDatabase("gylebook");
  onShutdown(database.stop);
  const port = await freePort();
  await migrate(database.url);
  const origin = `http://localhost:${port}`;
  const env = passingEnvironment({ databaseUrl: database.url, origin });
  await step("Filling it with the demo club", ...typescriptCommand("lib/ops/seed.ts"), { env });
  await buildWithBench();
  await serve({ host: "127.0.0.1", port, env });
  for (const part of parts) await run(...typescriptCommand(`tests/bench/${part}.ts`), { env, show: true });
}
