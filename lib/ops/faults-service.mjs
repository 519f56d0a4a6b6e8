/**
 * `npm run faults -- service`: people write recipes, revisions, drafts, readings and score sheets and sign in, over a
 * bad network and through two app processes in turn, while one harm after the other is done. In the end, whatever was
 * acknowledged must be there, once and whole. `--rounds=2` is a shorter run; `--control` as for the log.
 */
import { Buffer } from "node:buffer";
import { chmod, mkdir, mkdtemp, open, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startThrowAwayDatabase } from "./embedded-database.mjs";
import { freePort } from "./free-port.mjs";
import { mailbox } from "./mailbox.mjs";
import { migrate } from "./open-database.mjs";
import { reportService } from "./report-service.mjs";
import { run, start, typescriptCommand } from "./run.mjs";
import { passingEnvironment, serve } from "./server.mjs";
import { onShutdown } from "./shutdown.mjs";

const CONTROL = ["-c synchronous_commit=off", "-c wal_writer_delay=10s"];
/** So small that the disk is soon full. */
const SMALL = ["-c max_wal_size=96MB", "-c min_wal_size=32MB"];
const DISK_MB = 700;
const LONGEST_RECOVERY_MS = 90_000;
const DAY_MS = 86_400_000;

const wait = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

export async function attemptService({ rounds, seed, isControl }) {
  const folder = await mkdtemp(join(tmpdir(), "gylebook-faults-"));
  onShutdown(() => rm(folder, { recursive: true, force: true }));
  // The database is another user of this machine.
  await chmod(folder, 0o755);
  const disk = await mountDisk(join(folder, "disk"));
  const flags = [...SMALL, ...(isControl ? CONTROL : [])];
  const database = await startThrowAwayDatabase("gylebook", { flags, ...(disk === null ? {} : { within: disk }) });
  onShutdown(database.stop);
  await migrate(database.url);
  const ports = [await freePort(), await freePort()];
  const proxyPort = await freePort();
  const origin = `http://localhost:${proxyPort}`;
  const clock = join(folder, "clock");
  const env = passingEnvironment({ databaseUrl: database.url, origin });
  const jump = new URL("../../tests/faults/clock-jump.mjs", import.meta.url).href;
  const appEnv = { ...env, NODE_OPTIONS: `--import ${jump}`, GYLEBOOK_CLOCK_FILE: clock };
  const open = (at) => serve({ host: "127.0.0.1", port: ports[at], env: appEnv });
  const apps = [await open(0), await open(1)];
  const [command, args] = typescriptCommand("tests/faults/run-writers.ts");
  const setting = { seed, ports, proxyPort, origin };
  const child = start(command, args, {
    env: { ...env, GYLEBOOK_FAULTS: JSON.stringify(setting) },
    stdio: ["ignore", "inherit", "inherit", "ipc"],
  });
  const told = mailbox(child);
  await told.until("writing");
  // Else a control would lose the club and its sessions too, and nobody could write again.
  await asSuperuser(database, (client) => client.query("CHECKPOINT"));
  const harms = harmsTo({ database, apps, open, child, clock, disk });
  const times = await doHarm({ harms, rounds: isControl ? rounds * 3 : rounds, child, isControl });
  child.send({ kind: "quiet" });
  const result = await told.until("result");
  child.disconnect();
  return reportService({ ...result, times, isControl, hasDisk: disk !== null });
}

/** One kind after the other, each overcome before the next. */
async function doHarm({ harms, rounds, child, isControl }) {
  const times = new Map();
  // What loses unwritten commits is all that the control needs.
  const kinds = Object.keys(harms).filter((kind) => !isControl || kind === "database killed");
  for (let round = 0; round < rounds; round += 1) {
    for (const kind of kinds) {
      await wait(2000);
      const begun = Date.now();
      await harms[kind](round);
      const lifted = Date.now();
      const recovered = new Promise((resolve, reject) => {
        const late = () => reject(new Error(`nothing was acknowledged after: ${kind}`));
        const timer = setTimeout(late, LONGEST_RECOVERY_MS);
        const hear = (message) => {
          if (message.kind !== "recovered") return;
          clearTimeout(timer);
          child.off("message", hear);
          resolve(message.ms);
        };
        child.on("message", hear);
      });
      child.send({ kind: "lifted", at: lifted });
      const one = { lasted: lifted - begun, recovered: await recovered };
      times.set(kind, [...(times.get(kind) ?? []), one]);
      console.log(`${kind}: lasted ${one.lasted} ms, then ${one.recovered} ms until the next acknowledged write`);
    }
  }
  return times;
}

function harmsTo({ database, apps, open, child, clock, disk }) {
  const jump = async (at, ms) => {
    await writeFile(clock, String(ms));
    process.kill(apps[at].pid, "SIGUSR2");
    await wait(4000);
  };
  return {
    "app killed": async (round) => {
      const at = round % 2;
      apps[at].kill();
      await apps[at].ended;
      apps[at] = await open(at);
    },
    "database killed": async () => {
      await database.crash();
      await database.revive();
    },
    "database stopped at once": async () => {
      await database.halt();
      await wait(1500);
      await database.revive();
    },
    "connections exhausted": () => exhaustConnections(database),
    "clock jumps three days ahead, an hour back, and home": async (round) => {
      for (const ms of [3 * DAY_MS, -3_600_000, 0]) await jump(round % 2, ms);
    },
    "network slow by two seconds each way": async () => {
      child.send({ kind: "slow", ms: 2000 });
      await wait(6000);
      child.send({ kind: "slow", ms: 0 });
    },
    ...(disk === null ? {} : { "disk full": () => fillDisk(disk, database) }),
  };
}

/** Two connections for everybody, and a table that is locked by somebody who takes long. */
function exhaustConnections(database) {
  return asSuperuser(database, async (client) => {
    await client.query("ALTER ROLE gylebook CONNECTION LIMIT 2");
    await client.query("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE usename = 'gylebook'");
    await client.query("BEGIN");
    await client.query("LOCK TABLE recipe, brew_event IN ACCESS EXCLUSIVE MODE");
    await wait(5000);
    await client.query("COMMIT");
    await client.query("ALTER ROLE gylebook CONNECTION LIMIT -1");
  });
}

async function asSuperuser({ superuserUrl }, work) {
  const { default: pg } = await import("pg");
  const client = new pg.Client({ connectionString: superuserUrl });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

/** A small disk of its own, in memory; null where this process may not mount one. */
async function mountDisk(folder) {
  await mkdir(folder);
  const options = { stdio: "ignore" };
  const mounted = await run(
    "mount",
    ["-t", "tmpfs", "-o", `size=${DISK_MB}m,mode=755`, "gylebook", folder],
    options,
  ).catch(() => ({ code: 1 }));
  if (mounted.code !== 0) return null;
  onShutdown(() => run("umount", [folder], options));
  return folder;
}

async function fillDisk(disk, database) {
  const ballast = join(disk, "ballast");
  const file = await open(ballast, "w");
  const block = Buffer.alloc(1 << 16);
  try {
    for (;;) await file.write(block);
  } catch (error) {
    if (error.code !== "ENOSPC") throw error;
  } finally {
    await file.close();
  }
  await wait(6000);
  await rm(ballast);
  // A server that cannot write its log ends itself rather than confirm what it did not keep.
  await database.revive();
}
