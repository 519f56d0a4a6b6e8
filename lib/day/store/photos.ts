import type { DayDatabase, WaitingPhoto } from "./database";
import { STRICT } from "./queue";

/** Keeps a picture on this device until the server has it. */
export async function keepPhoto(database: DayDatabase, photo: WaitingPhoto): Promise<void> {
  const transaction = database.transaction("photos", "readwrite", STRICT);
  await transaction.store.put(photo);
  await transaction.done;
}
