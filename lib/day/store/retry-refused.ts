import type { Stamped } from "@/lib/model/log/log-entry";
import { STRICT, type Queue } from "./queue";

/** Puts what the server refused into the queue again, as it is: the reason may have been the server's. */
export async function retryRefused<E extends Stamped>(
  { database }: Queue<E>,
  isWanted: (event: E) => boolean,
): Promise<void> {
  const transaction = database.transaction("waiting", "readwrite", STRICT);
  for (const kept of await transaction.store.getAll()) {
    if (kept.refusal !== null && isWanted(kept.event)) await transaction.store.put({ ...kept, refusal: null });
  }
  await transaction.done;
}
