/**
 * `npm run two-versions -- <commit>`: the version of an earlier commit serves while the database is brought up to date by this
 * one, and then both serve at once. What one acknowledges the other finds; nothing may fail that the earlier version answered
 * before.
 */
import { existsSync } from "node:fs";
import { cp, mkdir } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startThrowAwayDatabase } from "./embedded-database.mjs";
import { freePort } from "./free-port.mjs";
import { migrate } from "./open-database.mjs";
import { ensureBuild, ensureClient, ensurePackages, requireNode } from "./prepare.mjs";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { run, start, step, typescriptCommand } from "./run.mjs";
import { runCommand } from "./run-command.mjs";
import { passingEnvironment, serve } from "./server.mjs";
import { onShutdown } from "./shutdown.mjs";
import { openVisitor } from "./two-versions/visitor.mjs";

const LEAST_PAGES = 20;
const PATIENCE_MS = 120_000;

await runCommand(async () => {
  requireNode();
  const [commit] = process.argv.slice(2);
  if (commit === undefined)
    throw new Refusal("Name the commit of the earlier version: npm run two-versions -- 1a2b3c4");
  await ensurePackages();
  await ensureClient();
  const earlier = await checkOut(commit);
  await ensureBuild();
  return compare(earlier);
});

/** The earlier version in a folder of its own, built. Its packages are those of this one, where the lock files agree. */
async function checkOut(commit) {
  const { code, output } = await run("git", ["rev-parse", "--short", `${commit}^{commit}`]);
  if (code !== 0) throw new Refusal(`There is no commit ${commit} in this clone.`);
  const folder = join(tmpdir(), "gylebook-versions", output.trim());
  if (!existsSync(folder)) {
    await mkdir(join(folder, ".."), { recursive: true });
    await step("Checking out the earlier version", "git", ["worktree", "add", "--detach", folder, commit]);
  }
  const packages = join(folder, "node_modules");
  if (!existsSync(packages))
    await cp(join(ROOT, "node_modules"), packages, { recursive: true, verbatimSymlinks: true });
  if (!existsSync(join(folder, ".next", "BUILD_ID"))) {
    // By its own means; the command for it is younger than they are.
    const build = "const m = await import('./lib/ops/prepare.mjs'); await m.ensureClient(); await m.ensureBuild();";
    await step("Building the earlier version", process.execPath, ["--input-type=module", "-e", build], { cwd: folder });
  }
  return folder;
}

async function compare(folder) {
  const database = await startThrowAwayDatabase("gylebook");
  onShutdown(database.stop);
  const [oldPort, newPort] = [await freePort(), await freePort()];
  const env = passingEnvironment({ databaseUrl: database.url, origin: `http://localhost:${oldPort}` });
  const [command, migration] = typescriptCommand("lib/ops/migrate.ts");
  await step("The database of the earlier version", command, migration, { cwd: folder, env });
  await step("Its demo club", command, typescriptCommand("lib/ops/seed.ts")[1], { cwd: folder, env });
  await serveEarlier(folder, oldPort, env);
  const setting = { origin: env.APP_ORIGIN, databaseUrl: database.superuserUrl };
  const before = await openVisitor({ ...setting, port: oldPort });
  await before.walk(1);

  const state = { isMigrated: false };
  const during = before.walkUntil(() => state.isMigrated);
  await migrate(database.url);
  state.isMigrated = true;
  await during;

  await serve({ host: "127.0.0.1", port: newPort, env });
  const after = await openVisitor({ ...setting, port: newPort });
  await Promise.all([before.walk(2), after.walk(2)]);
  const crossed = { old: await before.repeats(after.written), new: await after.repeats(before.written) };
  return report({ before, after, crossed, stored: await after.storedOf([...before.written, ...after.written]) });
}

async function serveEarlier(folder, port, env) {
  const next = join(folder, "node_modules", "next", "dist", "bin", "next");
  const child = start(process.execPath, [next, "start", "-H", "127.0.0.1", "-p", String(port)], {
    cwd: folder,
    env: { ...env, NODE_ENV: "production" },
    stdio: ["ignore", "ignore", "inherit"],
  });
  const until = Date.now() + PATIENCE_MS;
  while (Date.now() < until && child.exitCode === null) {
    const answer = await fetch(`http://127.0.0.1:${port}/sign-in`).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 300));
  }
  throw new Refusal("The earlier version did not start.");
}

function report({ before, after, crossed, stored }) {
  const written = before.written.length + after.written.length;
  const rows = [
    ["pages of the earlier version", before.pages.length],
    ["pages of this version", after.pages.length],
    ["pages asked of the earlier version, the migration included", before.asked],
    ["pages asked of this version", after.asked],
    ["answers that were not what they were before, or an error", before.wrong.length + after.wrong.length],
    ["entries acknowledged by the earlier version", before.written.length],
    ["entries acknowledged by this version", after.written.length],
    ["of these in the log, once each", stored],
    ["entries of this version that the earlier one knows", crossed.old],
    ["entries of the earlier version that this one knows", crossed.new],
  ];
  for (const [what, count] of rows) console.log(`${what.padEnd(62)} ${count}`);
  for (const each of [...before.wrong, ...after.wrong].slice(0, 20)) console.log(`  ${each}`);
  const isSound =
    before.wrong.length + after.wrong.length === 0 &&
    stored === written &&
    crossed.old === after.written.length &&
    crossed.new === before.written.length &&
    before.pages.length >= LEAST_PAGES;
  return isSound ? 0 : 1;
}
