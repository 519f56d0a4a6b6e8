import { spawnSync } from "node:child_process";
import { appendFile, chmod, chown, cp, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as delay } from "node:timers/promises";
import { freePort } from "../../lib/ops/free-port.mjs";
import { findPostgres, program } from "../../lib/ops/postgres-binaries.mjs";
import { withClient } from "./open-client";

interface Standby {
  readonly url: string;
  readonly superuserUrl: string;
  readonly stop: () => Promise<void>;
}

interface PrimaryServer {
  readonly url: string;
  readonly superuserUrl: string;
}

/** What belongs to the running primary and not to its data. */
const LEFT_OUT = /\/(postmaster\.pid|postmaster\.opts|server\.log)$/;

/** A hot standby of a running server on this machine, which receives all that is written there. */
export async function startStandby({ url, superuserUrl }: PrimaryServer): Promise<Standby> {
  const { bin, user } = await findPostgres();
  const folder = await mkdtemp(join(tmpdir(), "gylebook-standby-"));
  const data = join(folder, "postgres");
  await copyRunning(superuserUrl, data);
  await followPrimary(superuserUrl, data);
  for (const path of [folder, data]) await chmod(path, 0o700);
  if (user.uid !== undefined) {
    await chown(folder, user.uid, user.gid ?? user.uid);
    spawnSync("chown", ["-R", `${String(user.uid)}:${String(user.gid)}`, folder]);
  }
  const port = await freePort();
  const control = (...args: readonly string[]) =>
    spawnSync(join(bin, program("pg_ctl")), [...args, "-D", data], { ...user, cwd: folder, stdio: "ignore" }).status;
  const options = `-p ${String(port)} -c listen_addresses=127.0.0.1 -c unix_socket_directories='' -c fsync=off`;
  if (control("start", "-w", "-t", "60", "-l", join(data, "server.log"), "-o", options) !== 0) {
    throw new Error(`the standby in ${data} did not start`);
  }
  const at = (address: string): string => Object.assign(new URL(address), { port: String(port) }).href;
  await untilFollowing(superuserUrl);
  return {
    url: at(url),
    superuserUrl: at(superuserUrl),
    stop: async () => {
      control("stop", "-m", "immediate", "-w");
      await rm(folder, { recursive: true, force: true });
    },
  };
}

/** A base backup by hand: the program for it does not come with the embedded server. */
async function copyRunning(superuserUrl: string, data: string): Promise<void> {
  await withClient(superuserUrl, async (client) => {
    const { rows } = await client.query<{ data_directory: string }>("SHOW data_directory");
    const from = rows[0]?.data_directory ?? "";
    await client.query("SELECT pg_backup_start('standby', true)");
    await cp(from, data, { recursive: true, filter: (path) => !LEFT_OUT.test(path) });
    const stopped = await client.query<{ labelfile: string }>("SELECT labelfile FROM pg_backup_stop(false)");
    await writeFile(join(data, "backup_label"), stopped.rows[0]?.labelfile ?? "");
  });
}

async function followPrimary(superuserUrl: string, data: string): Promise<void> {
  const { username, password, port } = new URL(superuserUrl);
  await writeFile(join(data, "standby.signal"), "");
  await appendFile(
    join(data, "postgresql.auto.conf"),
    `\nprimary_conninfo = 'host=127.0.0.1 port=${port} user=${username} password=${password}'\n`,
  );
}

async function untilFollowing(superuserUrl: string): Promise<void> {
  for (let tries = 0; tries < 200; tries++) {
    const found = await withClient(superuserUrl, (client) =>
      client.query("SELECT FROM pg_stat_replication WHERE state = 'streaming'"),
    );
    if (found.rowCount === 1) return;
    await delay(50);
  }
  throw new Error("the standby does not follow");
}
