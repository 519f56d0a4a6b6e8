import { startKeptDatabase } from "./embedded-database.mjs";
import { Refusal } from "./refusal.mjs";
import { step, typescriptCommand } from "./run.mjs";
import { onShutdown } from "./shutdown.mjs";

/** The database of this installation, up to date: the one at DATABASE_URL, or the embedded one. */
export async function openDatabase({ mayShare }) {
  const database = await reachDatabase({ mayShare });
  await migrate(database.url);
  return database;
}

/** The same as it stands. `superuserUrl` is there for the embedded one only. */
export async function reachDatabase({ mayShare }) {
  const given = process.env.DATABASE_URL ?? "";
  if (given !== "") await reach(given);
  const database = given === "" ? await startKeptDatabase("gylebook") : { url: given, shared: false };
  if (database.shared && !mayShare) {
    throw new Refusal("Gylebook runs in this folder already: stop it first, with Ctrl+C where it runs.");
  }
  if (database.stop !== undefined) onShutdown(database.stop);
  return database;
}

export async function migrate(url) {
  const env = { ...process.env, DATABASE_URL: url };
  const told = await step("Bringing the database up to date", ...typescriptCommand("lib/ops/migrate.ts"), { env });
  console.log(`  ${told.trim()}`);
}

async function reach(url) {
  const { default: pg } = await import("pg");
  try {
    const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
    await client.connect();
    await client.end();
  } catch (error) {
    throw new Refusal(`The database at DATABASE_URL (${withoutPassword(url)}) is not reachable: ${reasonOf(error)}.`);
  }
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
