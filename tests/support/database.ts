import { randomBytes } from "node:crypto";
import { setTimeout as delay } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { Client } from "pg";
import { applyMigrations } from "../../lib/ops/apply-migrations";
import { startThrowAwayDatabase } from "../../lib/ops/embedded-database.mjs";

export const MIGRATIONS = fileURLToPath(new URL("../../prisma/migrations", import.meta.url));

/**
 * Set-up of the server tests: a fresh, migrated database for each run, on the server at DATABASE_URL_TEST (whose account
 * may make databases and roles, and is no superuser) or on one started for the run.
 */
export default async function setUp(): Promise<() => Promise<void>> {
  const given = process.env.DATABASE_URL_TEST ?? "";
  const server =
    given === ""
      ? await startThrowAwayDatabase("gylebook")
      : { url: given, superuserUrl: process.env.SUPERUSER_URL_TEST ?? given, stop: () => Promise.resolve() };
  const scratch = await createDatabase(server.url);
  await applyMigrations({ databaseUrl: scratch.url, folder: MIGRATIONS });
  process.env.DATABASE_URL = scratch.url;
  process.env.SUPERUSER_URL_TEST = server.superuserUrl;
  process.env.APP_ORIGIN = "http://localhost:3000";
  process.env.NEXTAUTH_SECRET ??= randomBytes(32).toString("hex");
  return async () => {
    await scratch.drop();
    await server.stop();
  };
}

interface ScratchDatabase {
  readonly url: string;
  readonly drop: () => Promise<void>;
}

/** Makes an empty database beside the one at the address. */
export async function createDatabase(beside: string): Promise<ScratchDatabase> {
  const name = `gylebook_test_${randomBytes(6).toString("hex")}`;
  await execute(beside, `CREATE DATABASE ${name}`);
  const address = new URL(beside);
  address.pathname = `/${name}`;
  return { url: address.href, drop: () => drop(beside, name) };
}

/** Refused while the server itself tidies up in it, after tests that write much; it soon has done. */
async function drop(beside: string, name: string, tries = 20): Promise<void> {
  try {
    await execute(beside, `DROP DATABASE ${name} WITH (FORCE)`);
  } catch (error) {
    if (tries === 0) throw error;
    await delay(500);
    await drop(beside, name, tries - 1);
  }
}

async function execute(databaseUrl: string, sql: string): Promise<void> {
  const client = new Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
