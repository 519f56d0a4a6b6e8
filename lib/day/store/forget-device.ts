import { openDayDatabase } from "./database";
import { STRICT } from "./queue";
import { openTastingDatabase } from "./tasting-database";

/**
 * Forgets what this device keeps of the server's data, of everybody who has signed in on it; for signing out. What is
 * not on the server yet stays: it is nowhere else.
 */
export async function forgetSheets(): Promise<void> {
  await Promise.all([forgetDays(), forgetTastings()]);
}

async function forgetDays(): Promise<void> {
  const database = await openDayDatabase();
  const transaction = database.transaction(["sheets", "acknowledged"], "readwrite", STRICT);
  await Promise.all([transaction.objectStore("sheets").clear(), transaction.objectStore("acknowledged").clear()]);
  await transaction.done;
  database.close();
}

async function forgetTastings(): Promise<void> {
  const database = await openTastingDatabase();
  const transaction = database.transaction(["sheets", "acknowledged"], "readwrite", STRICT);
  await Promise.all([transaction.objectStore("sheets").clear(), transaction.objectStore("acknowledged").clear()]);
  await transaction.done;
  database.close();
}
