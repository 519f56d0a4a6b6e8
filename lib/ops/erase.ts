/** Erases what accounts that were closed left to nobody, in the database at DATABASE_URL: `npm run erase`, each night. */
import { eraseEndedSpaces } from "./erase-ended-spaces";

try {
  const databaseUrl = process.env.DATABASE_DIRECT_URL || (process.env.DATABASE_URL ?? "");
  if (databaseUrl === "") throw new Error("Set DATABASE_URL to the address of the database.");
  const count = await eraseEndedSpaces(databaseUrl);
  console.log(count === 0 ? "There was nothing to erase." : `Erased: ${count} spaces that ended.`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
