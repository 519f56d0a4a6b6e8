import { existsSync, readFileSync } from "node:fs";
import { rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { ensureDay } from "./build-day.mjs";
import { isStale } from "./newest-change.mjs";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { step } from "./run.mjs";

const inRoot = (...parts) => join(ROOT, ...parts);

/** Refuses a Node that the packages do not run on, before one of them says so less clearly. */
export function requireNode() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if ((major === 20 && minor >= 19) || major >= 22) return;
  throw new Refusal(`Gylebook needs Node 20.19 or newer, or 22 and newer; this is Node ${process.versions.node}.`);
}

/** Installs the packages, unless what is installed is what the lock file says. */
export async function ensurePackages() {
  if (isInstalled()) return;
  // Run by npm, this is started with npm's own file; otherwise npm is on the path.
  const npm = process.env.npm_execpath;
  const args = ["ci", "--include=dev", "--no-audit", "--no-fund"];
  const heading = "Installing packages (a minute or two the first time)";
  if (npm?.endsWith("npm-cli.js")) await step(heading, process.execPath, [npm, ...args]);
  else await step(heading, "npm", args, { shell: process.platform === "win32" });
}

function isInstalled() {
  const record = inRoot("node_modules", ".package-lock.json");
  if (!existsSync(record)) return false;
  const present = JSON.parse(readFileSync(record, "utf8")).packages;
  const wanted = JSON.parse(readFileSync(inRoot("package-lock.json"), "utf8")).packages;
  return Object.entries(wanted).every(([path, { version, optional, devOptional }]) => {
    // Optional packages are for other machines than this one.
    return path === "" || optional || devOptional || present[path]?.version === version;
  });
}

/** Makes the database client from the schema. */
export async function ensureClient() {
  const schema = inRoot("prisma", "schema");
  if (
    !isStale(inRoot("prisma", "generated", "client.ts"), [schema, inRoot("node_modules", "prisma", "package.json")])
  ) {
    return;
  }
  const prisma = inRoot("node_modules", "prisma", "build", "index.js");
  // Generating would download an engine that it does not use, and fail without a network; naming any program avoids it.
  const engine = process.env.PRISMA_SCHEMA_ENGINE_BINARY ?? process.execPath;
  const env = { ...process.env, PRISMA_SCHEMA_ENGINE_BINARY: engine, PRISMA_HIDE_UPDATE_MESSAGE: "1" };
  await step("Making the database client", process.execPath, [prisma, "generate"], { env });
}

const PAGES = [
  "app",
  "lib/calc",
  "lib/model",
  "lib/server",
  "lib/ui",
  "prisma/schema",
  "public",
  "proxy.ts",
  "instrumentation.ts",
  "next.config.ts",
];
const TOOLS = ["postcss.config.mjs", "tsconfig.json", "package-lock.json"];

// Says that a build has the pages of the benchmarks too; the next build takes it away.
const BENCH_MARK = inRoot(".next", "bench");

/** Builds the pages, unless the build is newer than every source file. */
export async function ensureBuild() {
  await ensureDay();
  const sources = [...PAGES, ...TOOLS].map((path) => inRoot(path));
  if (!isStale(inRoot(".next", "BUILD_ID"), sources) && !existsSync(BENCH_MARK)) return;
  await rm(BENCH_MARK, { force: true });
  await buildPages(process.env);
}

/** Builds the pages with those of the benchmarks among them. Whoever starts the server after it builds anew, without. */
export async function buildWithBench() {
  await ensureDay();
  await buildPages({ ...process.env, GYLEBOOK_BENCH: "on" });
  await writeFile(BENCH_MARK, "");
}

async function buildPages(environment) {
  const next = inRoot("node_modules", "next", "dist", "bin", "next");
  const env = { ...environment, NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1" };
  await step("Building the pages (about a minute)", process.execPath, [next, "build"], { env });
}
