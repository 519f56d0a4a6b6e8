import type { DeliveryAnswer } from "@/lib/model/log/delivery-answer";
import type { Stamped } from "@/lib/model/log/log-entry";
import { STRICT, type Queue, type Waiting } from "./queue";

/**
 * Notes what the server has said of a delivery. What it has is kept as acknowledged in the same step in which it leaves
 * the queue; what it refused stays, with the reason.
 */
export async function applyAnswer<E extends Stamped>(
  { database, placeOf }: Queue<E>,
  answer: DeliveryAnswer,
  clockOffsetMs: number | null,
): Promise<void> {
  const transaction = database.transaction(["waiting", "acknowledged", "device"], "readwrite", STRICT);
  const waiting = transaction.objectStore("waiting");
  const acknowledged = transaction.objectStore("acknowledged");
  for (const id of [...answer.stored, ...answer.duplicate]) {
    const kept = await waiting.get(id);
    if (kept === undefined) continue;
    const { event, userId, userName } = kept;
    const entry = { event, actorId: userId, actorName: userName, receivedAt: answer.receivedAt, clockOffsetMs };
    await acknowledged.put({ id, entry, ...placeOf(event) });
    await waiting.delete(id);
  }
  const device = transaction.objectStore("device");
  for (const { id, reason, isSequenceTaken } of answer.rejected) {
    const kept = await waiting.get(id);
    if (kept === undefined) continue;
    const count = await device.get("this");
    if (isSequenceTaken && count !== undefined) {
      // The browser gave back an older count, after a restored backup for one; the entry gets a new number and goes again.
      const made = count.made + 1;
      await device.put({ ...count, made }, "this");
      await waiting.put({ ...kept, event: { ...kept.event, deviceSeq: made } } satisfies Waiting<E>);
    } else {
      await waiting.put({ ...kept, refusal: reason });
    }
  }
  await transaction.done;
}
