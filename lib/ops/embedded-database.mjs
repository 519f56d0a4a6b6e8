import { randomBytes } from "node:crypto";
import { existsSync } from "node:fs";
import { chown, mkdir, mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { freePort, isFree } from "./free-port.mjs";
import { findPostgres, program } from "./postgres-binaries.mjs";
import { isOurCommand, isTakenByAnother } from "./process-facts.mjs";
import { Refusal } from "./refusal.mjs";
import { run } from "./run.mjs";

// Sorted and lower-cased the same on every machine, whatever languages it has installed.
const CLUSTER = ["--encoding=UTF8", "--locale=C", "--locale-provider=builtin", "--builtin-locale=C.UTF-8"];
// Room for the search of a large club: what PostgreSQL takes of itself makes it fetch pages of a rare word one by one.
const MEMORY = ["-c shared_buffers=384MB"];
// A throw-away database may lose everything in a power cut, and is faster for it.
const CARELESS = ["-c fsync=off", "-c synchronous_commit=off", "-c full_page_writes=off"];

/**
 * Starts the database whose data are kept between runs, or joins the one that another of our commands runs: that one is
 * `shared`, and not stopped by us.
 */
export async function startKeptDatabase(name) {
  const postgres = await findPostgres();
  return startIn(join(postgres.home, "postgres"), postgres, { name, flags: [] });
}

/**
 * Starts a database in a temporary folder, which goes when it is stopped. It is quick and may lose what it has said to
 * have written, unless `flags` say otherwise. `crash` kills it with everything it runs, `halt` stops it as an administrator
 * does who waits for nobody, and `revive` starts it again if it does not run. `within` is another place for its folder.
 */
export async function startThrowAwayDatabase(name, { flags = CARELESS, within = tmpdir() } = {}) {
  const postgres = await findPostgres();
  const folder = await mkdtemp(join(within, "gylebook-postgres-"));
  await giveTo(postgres.user, folder);
  const data = join(folder, "postgres");
  const database = await startIn(data, postgres, { name, flags });
  const stop = async () => {
    await database.stop();
    await rm(folder, { recursive: true, force: true });
  };
  const crash = () => killAll(data);
  const halt = () => control(data, postgres, ["stop", "-m", "fast", "-w"]);
  const revive = async () => {
    if ((await portOfRunning(data, postgres)) !== null) return;
    await dropStalePid(data);
    await startServer(data, postgres, Number(new URL(database.url).port), flags);
  };
  return { ...database, stop, crash, halt, revive };
}

/** Ends the server and each of its processes at once, as a power cut would. */
async function killAll(data) {
  const pid = Number.parseInt(await readFile(join(data, "postmaster.pid"), "utf8"), 10);
  // The server leads a group of its own, so that none of its processes outlives it.
  const { code, output } = await run("ps", ["-o", "pid=", "--ppid", String(pid)]);
  const children = code === 0 ? output.trim().split(/\s+/).map(Number) : [];
  for (const each of [pid, ...children]) {
    try {
      process.kill(each, "SIGKILL");
    } catch {
      // It has ended by itself between the two lines.
    }
  }
  // A new server refuses to start while the old one is still on its way out.
  while ([pid, ...children].some(isThere)) await new Promise((resolve) => setTimeout(resolve, 50));
}

function isThere(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

async function startIn(data, postgres, { name, flags }) {
  if (!existsSync(data)) await initialise(data, postgres);
  const kept = await readSettings(data);
  await dropStalePid(data);
  const runningPort = await portOfRunning(data, postgres);
  if (runningPort !== null && isOurCommand(kept.owner)) {
    return { ...(await ensureDatabase(kept, name)), shared: true, stop: () => Promise.resolve() };
  }
  // Nobody owns a server that runs all the same: its command was killed. It is ours now.
  const port = runningPort ?? ((await isFree(kept.port)) ? kept.port : await freePort());
  const settings = { ...kept, port, owner: process.pid };
  await writeSettings(data, settings);
  if (runningPort === null) await startServer(data, postgres, port, flags);
  const stop = async () => {
    await control(data, postgres, ["stop", "-m", "fast", "-w"]);
    await writeSettings(data, { ...settings, owner: null });
  };
  try {
    return { ...(await ensureDatabase(settings, name)), shared: false, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

async function initialise(data, { bin, user }) {
  console.log("Making the database …");
  const settings = { port: await freePort(), rootPassword: newPassword(), password: newPassword(), owner: null };
  const passwordFolder = await mkdtemp(join(tmpdir(), "gylebook-password-"));
  const passwordFile = join(passwordFolder, "password");
  await writeFile(passwordFile, `${settings.rootPassword}\n`, { mode: 0o600 });
  await giveTo(user, passwordFolder, passwordFile);
  // Made under another name, so that the folder with the right one is always whole.
  const unfinished = `${data}.unfinished`;
  await rm(unfinished, { recursive: true, force: true });
  await mkdir(unfinished, { recursive: true, mode: 0o700 });
  await giveTo(user, unfinished);
  const args = ["--pgdata", unfinished, "--username=postgres", "--auth=scram-sha-256", `--pwfile=${passwordFile}`];
  const options = { ...user, cwd: unfinished, env: plainEnvironment() };
  const { code, output } = await run(join(bin, program("initdb")), [...args, ...CLUSTER], options);
  await rm(passwordFolder, { recursive: true });
  if (code !== 0) throw new Refusal(`The embedded database could not be made in ${data}: ${output.trim()}`);
  await writeSettings(data, settings);
  await rename(unfinished, data);
}

async function giveTo(user, ...paths) {
  if ("uid" in user) for (const path of paths) await chown(path, user.uid, user.gid);
}

/** Port, passwords and the process that runs the server, beside the data and readable by us alone. */
function settingsFile(data) {
  return `${data}.json`;
}

async function readSettings(data) {
  const text = await readFile(settingsFile(data), "utf8").catch(() => null);
  if (text !== null) return JSON.parse(text);
  throw new Refusal(
    `${settingsFile(data)}, which holds the password of the database in ${data}, is missing: put it back, or remove the data.`,
  );
}

async function writeSettings(data, settings) {
  await writeFile(settingsFile(data), JSON.stringify(settings), { mode: 0o600 });
}

async function startServer(data, postgres, port, flags) {
  // No socket file: the port is enough, and two databases cannot quarrel about its place.
  const options = [`-p ${port}`, "-c listen_addresses=127.0.0.1", "-c unix_socket_directories=''", "-c timezone=UTC"];
  const log = join(data, "server.log");
  const args = ["start", "-w", "-t", "60", "-l", log, "-o", [...options, ...MEMORY, ...flags].join(" ")];
  const { code } = await control(data, postgres, args);
  if (code === 0) return;
  const told = await readFile(log, "utf8").catch(() => "");
  throw new Refusal(`The embedded database did not start; the end of ${log} says: ${told.trim().split("\n").at(-1)}`);
}

function control(data, { bin, user }, args) {
  // Its output goes nowhere, because the server would inherit the pipes and hold them open; and in a group of its own a
  // second Ctrl+C does not reach it while it stops the server.
  const options = { ...user, cwd: data, env: plainEnvironment(), stdio: "ignore", detached: true, windowsHide: true };
  return run(join(bin, program("pg_ctl")), [...args, "-D", data], options);
}

/** The port of a server that an earlier run left behind when it was killed; null when there is none. */
async function portOfRunning(data, postgres) {
  const { code } = await control(data, postgres, ["status"]);
  if (code !== 0) return null;
  const lines = (await readFile(join(data, "postmaster.pid"), "utf8")).split("\n");
  return Number(lines[3]);
}

/**
 * After a power cut the number in the file may belong to another program by now, and PostgreSQL would not start. Where it
 * belongs to nobody, PostgreSQL itself makes sure that nothing of the old server is left.
 */
async function dropStalePid(data) {
  const file = join(data, "postmaster.pid");
  const pid = Number.parseInt(await readFile(file, "utf8").catch(() => ""), 10);
  if (Number.isInteger(pid) && isTakenByAnother(pid)) await rm(file, { force: true });
}

/** Makes the database and the user that owns it, who is no superuser, and returns the addresses for this one and for all. */
async function ensureDatabase({ port, rootPassword, password }, name) {
  const { default: pg } = await import("pg");
  const client = new pg.Client({
    host: "127.0.0.1",
    port,
    user: "postgres",
    password: rootPassword,
    database: "postgres",
  });
  await client.connect();
  try {
    const { rows } = await client.query("SELECT EXISTS (SELECT FROM pg_roles WHERE rolname = 'gylebook') AS present");
    if (!rows[0].present) {
      await client.query(`CREATE ROLE gylebook LOGIN CREATEROLE CREATEDB PASSWORD ${pg.escapeLiteral(password)}`);
    }
    const found = await client.query("SELECT FROM pg_database WHERE datname = $1", [name]);
    if (found.rowCount === 0) await client.query(`CREATE DATABASE ${pg.escapeIdentifier(name)} OWNER gylebook`);
  } finally {
    await client.end();
  }
  const place = `127.0.0.1:${port}/${name}`;
  return {
    url: `postgresql://gylebook:${password}@${place}`,
    superuserUrl: `postgresql://postgres:${rootPassword}@${place}`,
  };
}

function newPassword() {
  return randomBytes(24).toString("hex");
}

/** Settings for another PostgreSQL, such as PGPORT or PGDATA, must not reach this one. */
function plainEnvironment() {
  const own = Object.entries(process.env).filter(([name]) => !name.startsWith("PG"));
  return { ...Object.fromEntries(own), LC_ALL: "C", LANG: "C" };
}
