/** Brings the database at DATABASE_URL up to date: `npm run migrate`. */
import { fileURLToPath } from "node:url";
import { MigrationError } from "umzug";
import { directory } from "@/lib/server/db";
import { fillFigures } from "@/lib/server/search/figures";
import { applyMigrations } from "./apply-migrations";

const folder = fileURLToPath(new URL("../../prisma/migrations", import.meta.url));

async function migrate(): Promise<string> {
  // Past a pooler: a migration holds a lock of its session, and makes what the application may not.
  const databaseUrl = process.env.DATABASE_DIRECT_URL || (process.env.DATABASE_URL ?? "");
  if (databaseUrl === "") throw new Error("Set DATABASE_URL to the address of the database.");
  const names = await applyMigrations({ databaseUrl, folder });
  const told = names.length === 0 ? "The database is up to date." : `Applied to the database: ${names.join(", ")}.`;
  // What only lib/calc can compute, no migration can.
  const filled = await fillFigures();
  return filled === 0 ? told : `${told} Figures computed for the search: ${filled} recipes.`;
}

function inOneSentence(error: unknown): string {
  if (error instanceof MigrationError && error.cause instanceof Error) {
    return `The migration ${error.migration.name} was not applied: ${error.cause.message}`;
  }
  return error instanceof Error ? error.message : String(error);
}

try {
  console.log(await migrate());
} catch (error) {
  console.error(inOneSentence(error));
  process.exitCode = 1;
} finally {
  await directory.$disconnect();
}
