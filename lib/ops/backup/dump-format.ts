import { execFile } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { Refusal } from "../refusal.mjs";

const runFile = promisify(execFile);
const FILE = "database.dump";
/** Where Debian and its relatives keep the programs of each version beside each other. */
const VERSIONS = "/usr/lib/postgresql";

type Program = "pg_dump" | "pg_restore";

/**
 * A program of PostgreSQL that is at least as new as the server: an older one refuses. Null where none is installed; the
 * embedded database comes without.
 */
export async function findProgram(name: Program, serverMajor: number): Promise<string | null> {
  const beside = existsSync(VERSIONS)
    ? readdirSync(VERSIONS).map((version) => join(VERSIONS, version, "bin", name))
    : [];
  const fitting: { readonly path: string; readonly major: number }[] = [];
  for (const path of [name, ...beside]) {
    const told = await runFile(path, ["--version"]).catch(() => null);
    const major = Number(/ (\d+)/.exec(told?.stdout ?? "")?.[1] ?? "0");
    if (major >= serverMajor) fitting.push({ path, major });
  }
  return fitting.sort((a, b) => a.major - b.major)[0]?.path ?? null;
}

export async function requireProgram(name: Program, serverMajor: number): Promise<string> {
  const path = await findProgram(name, serverMajor);
  if (path !== null) return path;
  throw new Refusal(
    `There is no ${name} ${serverMajor} or newer here: install the package postgresql-client-${serverMajor}` +
      `${name === "pg_dump" ? ", or leave out --format=dump" : ""}.`,
  );
}

/** Writes the database as it was when the snapshot was exported. What is in no log file is in none of a backup either. */
export async function writeDump(url: string, program: string, snapshot: string, folder: string): Promise<void> {
  const file = `--file=${join(folder, FILE)}`;
  await call(program, url, ["--format=custom", "--no-unlogged-table-data", `--snapshot=${snapshot}`, file]);
}

/** Restores into a database without tables, all of it or nothing; whoever restores owns everything. */
export async function loadDump(url: string, program: string, folder: string): Promise<void> {
  const asOwner = ["--no-owner", "--single-transaction", "--exit-on-error"];
  await call(program, url, [...asOwner, join(folder, FILE)]);
}

/** The password goes by the environment, because arguments can be read by everybody on the machine. */
async function call(program: string, url: string, args: readonly string[]): Promise<void> {
  const address = new URL(url);
  const password = decodeURIComponent(address.password);
  address.password = "";
  const env = { ...process.env, ...(password === "" ? {} : { PGPASSWORD: password }) };
  await runFile(program, [...args, `--dbname=${address.href}`], { env, maxBuffer: 16 * 1024 * 1024 }).catch(
    (error: unknown) => {
      const told = error instanceof Error && "stderr" in error ? String(error.stderr).trim() : String(error);
      throw new Refusal(`${program} failed: ${told}`);
    },
  );
}
