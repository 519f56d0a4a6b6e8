import type { Stamped } from "@/lib/model/log/log-entry";
import { newId } from "@/lib/ui/brew/new-id";
import type { DeviceClock } from "./clock";
import { STRICT, type Queue, type Waiting } from "./queue";

/** Who writes, and in which club. */
export interface Person {
  readonly space: string;
  readonly userId: string;
  readonly userName: string;
}

/**
 * Keeps events on this device. When the promise is fulfilled they are on its disk, all of them or none; whatever happens
 * to the page, the network or the server, they are sent sooner or later.
 *
 * @param make - Each event from the stamp that it gets here.
 * @param occurredAt - When it happened, where that is not now.
 */
export async function keepInQueue<E extends Stamped>(
  { database }: Queue<E>,
  clock: DeviceClock,
  { space, userId, userName }: Person,
  make: readonly ((stamp: Stamped) => E)[],
  occurredAt: number = clock.now(),
): Promise<readonly E[]> {
  const now = clock.now();
  const made = { page: clock.page, ahead: now - clock.steady() };
  const transaction = database.transaction(["device", "waiting"], "readwrite", STRICT);
  try {
    const device = transaction.objectStore("device");
    const known = (await device.get("this")) ?? { id: newId(now), made: 0 };
    const events = make.map((stamped, i) =>
      stamped({
        id: newId(now),
        deviceId: known.id,
        deviceSeq: known.made + 1 + i,
        // Written together, they still have an order: an alarm is heard, and then set again.
        occurredAt: new Date(occurredAt + i).toISOString(),
      }),
    );
    await device.put({ id: known.id, made: known.made + events.length }, "this");
    const waiting = transaction.objectStore("waiting");
    for (const event of events) {
      await waiting.add({ event, space, userId, userName, clock: made, refusal: null } satisfies Waiting<E>);
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
