import { startKeptDatabase } from "./embedded-database.mjs";
import { Refusal } from "./refusal.mjs";
import { step, typescriptCommand } from "./run.mjs";

/** The database of this installation, up to date: the one at DATABASE_URL, or the embedded one. */
export async function openDatabase() {
  const given = process.env.DATABASE_URL ?? "";
  const database = given === "" ? await startKeptDatabase("gylebook") : await reachDatabase(given);
  try {
    await migrate(database.url);
    return database;
  } catch (error) {
    await database.stop();
    throw error;
  }
}

export async function migrate(url) {
  const env = { ...process.env, DATABASE_URL: url };
  const told = await step("Bringing the database up to date", ...typescriptCommand("lib/ops/migrate.ts"), { env });
  console.log(`  ${told.trim()}`);
}

async function reachDatabase(url) {
  const { default: pg } = await import("pg");
  try {
    const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
    await client.connect();
    await client.end();
  } catch (error) {
    throw new Refusal(`The database at DATABASE_URL (${withoutPassword(url)}) is not reachable: ${reasonOf(error)}.`);
  }
  return { url, stop: () => Promise.resolve() };
}

/** Trying several addresses of one name gives an error without a message, around one for each address. */
function reasonOf(error) {
  const [first] = error.errors ?? [];
  return first?.message ?? error.message;
}

function withoutPassword(url) {
  try {
    const address = new URL(url);
    if (address.password !== "") address.password = "***";
    return address.href;
  } catch {
    return "not an address";
  }
}
