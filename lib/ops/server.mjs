import { spawn } from "node:child_process";
import { randomBytes } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { isFree } from "./free-port.mjs";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";
import { onShutdown } from "./shutdown.mjs";

const NEXT = join(ROOT, "node_modules", "next", "dist", "bin", "next");
const OBSERVE = new URL("observe.mjs", import.meta.url).href;
const PATIENCE_MS = 60_000;
// Longer than proxies and sensors leave a connection idle: one that is closed just as they write loses the request.
const IDLE_CONNECTION_MS = 75_000;
const LONGEST_FAREWELL_MS = 30_000;

/** What the server reads from its environment; whatever is set already is kept. */
export async function serverEnvironment({ databaseUrl, port }) {
  const { APP_ORIGIN, NEXTAUTH_URL, NEXTAUTH_SECRET } = process.env;
  const origin = APP_ORIGIN || NEXTAUTH_URL || `http://localhost:${port}`;
  return {
    ...process.env,
    DATABASE_URL: databaseUrl,
    APP_ORIGIN: origin,
    NEXTAUTH_URL: NEXTAUTH_URL || origin,
    NEXTAUTH_SECRET: NEXTAUTH_SECRET || (await keptSecret()),
    NEXT_TELEMETRY_DISABLED: "1",
  };
}

/** The same for a server that is there for one run only, whatever address and secret this installation has. */
export function passingEnvironment({ databaseUrl, origin }) {
  return {
    ...process.env,
    DATABASE_URL: databaseUrl,
    APP_ORIGIN: origin,
    NEXTAUTH_URL: origin,
    NEXTAUTH_SECRET: randomBytes(32).toString("hex"),
    NEXT_TELEMETRY_DISABLED: "1",
    GYLEBOOK_DEMO: "on",
  };
}

/** Kept, because whoever is signed in should stay so after a restart. */
async function keptSecret() {
  const file = join(ROOT, ".data", "secret");
  if (!existsSync(file)) {
    await mkdir(join(ROOT, ".data"), { recursive: true });
    await writeFile(file, randomBytes(32).toString("base64url"), { mode: 0o600 });
  }
  return (await readFile(file, "utf8")).trim();
}

export async function requireFreePort(port, host) {
  if (!Number.isInteger(port) || port < 1 || port > 65535) {
    throw new Refusal(`PORT=${process.env.PORT} is not a port: choose a number from 1 to 65535.`);
  }
  if (await isFree(port, host)) return;
  throw new Refusal(`Port ${port} is taken by another program: choose another one, as in PORT=${port + 1} npm start.`);
}

/** Serves the built pages and returns the process once they answer; `kill` ends it without a farewell. */
export async function serve({ host, port, env }) {
  const idle = ["--keepAliveTimeout", String(IDLE_CONNECTION_MS)];
  const args = ["--import", OBSERVE, NEXT, "start", "-H", host, "-p", String(port), ...idle];
  const options = { cwd: ROOT, env: { ...env, NODE_ENV: "production" }, stdio: ["pipe", "pipe", "inherit"] };
  // Not among the children that are ended at once: it is told first, and has a farewell of its own.
  const child = spawn(process.execPath, args, options);
  const ended = new Promise((resolve) => child.once("close", resolve));
  onShutdown(() => end(child, ended));
  await untilReady(port, child);
  // What it says while it starts, we say ourselves.
  child.stdout.pipe(process.stdout);
  return { ended, kill: () => child.kill("SIGKILL"), pid: child.pid };
}

async function untilReady(port, child) {
  const begun = Date.now();
  child.stdout.resume();
  while (Date.now() - begun < PATIENCE_MS) {
    if (child.exitCode !== null) throw new Refusal(`The server ended at once (exit code ${child.exitCode}).`);
    const answer = await fetch(`http://127.0.0.1:${port}/api/health/ready`).catch(() => null);
    if (answer?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
  throw new Refusal(`The server did not answer on port ${port} within ${PATIENCE_MS / 1000} s.`);
}

/**
 * Says first that it is not ready, for as long as whoever sends it requests takes to notice (DRAIN_SECONDS); then requests
 * under way are answered, and one that never ends does not keep the server.
 */
async function end(child, ended) {
  const hasEnded = () => child.exitCode !== null || child.signalCode !== null;
  const drainS = Number(process.env.DRAIN_SECONDS || 0);
  if (drainS > 0 && !hasEnded()) {
    child.stdin.write("drain\n");
    await Promise.race([ended, new Promise((resolve) => setTimeout(resolve, drainS * 1000))]);
  }
  if (hasEnded()) return;
  child.kill("SIGTERM");
  const impatience = setTimeout(() => child.kill("SIGKILL"), LONGEST_FAREWELL_MS);
  await ended;
  clearTimeout(impatience);
}
