import { openDayDatabase, STRICT } from "./database";

/**
 * Forgets what this device keeps of the server's data, of everybody who has signed in on it; for signing out. What is
 * not on the server yet stays: it is nowhere else.
 */
export async function forgetSheets(): Promise<void> {
  const database = await openDayDatabase();
  const transaction = database.transaction(["sheets", "acknowledged"], "readwrite", STRICT);
  await Promise.all([transaction.objectStore("sheets").clear(), transaction.objectStore("acknowledged").clear()]);
  await transaction.done;
  database.close();
}
