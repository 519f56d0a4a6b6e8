import type { EventContent, LogEvent } from "@/lib/model/log/log-event";
import { newId } from "@/lib/ui/brew/new-id";
import type { DeviceClock } from "./clock";
import { STRICT, type DayDatabase, type Waiting } from "./database";

/** Who writes, and at which brew. */
export interface Writer {
  readonly space: string;
  readonly brewId: string;
  readonly userId: string;
  readonly userName: string;
}

/**
 * Keeps events on this device. When the promise is fulfilled they are on its disk, all of them or none; whatever happens
 * to the page, the network or the server, they are sent sooner or later.
 *
 * @param occurredAt - When it happened, where that is not now.
 */
export async function keepEvents(
  database: DayDatabase,
  clock: DeviceClock,
  writer: Writer,
  contents: readonly EventContent[],
  occurredAt: number = clock.now(),
): Promise<readonly LogEvent[]> {
  const now = clock.now();
  const made = { page: clock.page, ahead: now - clock.steady() };
  const transaction = database.transaction(["device", "waiting"], "readwrite", STRICT);
  const { space, userId, userName } = writer;
  try {
    const device = transaction.objectStore("device");
    const known = (await device.get("this")) ?? { id: newId(now), made: 0 };
    const events = contents.map((content, i): LogEvent => ({
      ...content,
      id: newId(now),
      brewId: writer.brewId,
      deviceId: known.id,
      deviceSeq: known.made + 1 + i,
      // Written together, they still have an order: an alarm is heard, and then set again.
      occurredAt: new Date(occurredAt + i).toISOString(),
    }));
    await device.put({ id: known.id, made: known.made + events.length }, "this");
    const waiting = transaction.objectStore("waiting");
    for (const event of events) {
      await waiting.add({ event, space, userId, userName, clock: made, refusal: null } satisfies Waiting);
    }
    await transaction.done;
    return events;
  } catch (error) {
    // A write that throws does not undo those before it by itself.
    abort(transaction);
    await transaction.done.catch(() => undefined);
    throw error;
  }
}

/** Undoes what a transaction has written; one that has ended by itself is left alone. */
function abort(transaction: { readonly abort: () => void }): void {
  try {
    transaction.abort();
  } catch {
    // It was aborted already, for want of room for one.
  }
}
