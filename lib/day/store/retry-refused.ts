import { STRICT, type DayDatabase } from "./database";

/** Puts what the server refused into the queue again, as it is: the reason may have been the server's. */
export async function retryRefused(database: DayDatabase, brewId: string): Promise<void> {
  const transaction = database.transaction("waiting", "readwrite", STRICT);
  for (const kept of await transaction.store.index("brew").getAll(brewId)) {
    if (kept.refusal !== null) await transaction.store.put({ ...kept, refusal: null });
  }
  await transaction.done;
}
