import type { Delivery } from "@/lib/model/log/delivery";
import type { Stamped } from "@/lib/model/log/log-entry";
import type { DeliveryAnswer } from "@/lib/model/log/delivery-answer";
import { applyAnswer } from "../store/apply-answer";
import { wasSet, type DeviceClock } from "../store/clock";
import type { Queue, Waiting } from "../store/queue";

/** How a delivery went. */
export type FlushOutcome =
  | { readonly kind: "done" }
  /** The server could not be reached, or was not well. */
  | { readonly kind: "unreachable" }
  | { readonly kind: "signed out" }
  /** The server answers and does not take it: no member any more, a brew that is not there. */
  | { readonly kind: "refused"; readonly reason: string };

export interface Post {
  (delivery: Delivery): Promise<{ readonly status: number; readonly body: unknown }>;
}

export interface FlushSetting<E extends Stamped> {
  readonly queue: Queue<E>;
  readonly clock: DeviceClock;
  readonly post: Post;
  readonly userId: string;
}

/** As many as the server takes at once. */
const AT_ONCE = 100;

/** Of the last delivery of this page; an estimate for the next one. */
let roundTripMs = 0;

/**
 * Sends what waits, oldest first, until nothing waits or the server does not answer. Nothing is taken out of the queue
 * that the server has not acknowledged by name.
 */
export async function flush<E extends Stamped>(setting: FlushSetting<E>): Promise<FlushOutcome> {
  for (;;) {
    const all = await setting.queue.database.getAllFromIndex("waiting", "user", setting.userId);
    const [first] = all.filter(isDue).sort(byCount);
    if (first === undefined) return { kind: "done" };
    const batch = all
      .filter((each) => isDue(each) && each.space === first.space)
      .sort(byCount)
      .slice(0, AT_ONCE);
    const outcome = await deliver(setting, first.space, batch);
    if (outcome.kind !== "done") return outcome;
  }
}

const isDue = ({ refusal }: Waiting<Stamped>): boolean => refusal === null;

function byCount(a: Waiting<Stamped>, b: Waiting<Stamped>): number {
  return (a.event.deviceSeq ?? 0) - (b.event.deviceSeq ?? 0);
}

async function deliver<E extends Stamped>(
  { queue, clock, post, userId }: FlushSetting<E>,
  space: string,
  batch: readonly Waiting<E>[],
): Promise<FlushOutcome> {
  const sentAt = clock.now();
  const before = clock.steady();
  const unsteady = batch.filter((each) => wasSet(each.clock, clock)).map(({ event }) => event.id);
  const events = batch.map(({ event }) => event);
  let answer: Awaited<ReturnType<Post>>;
  try {
    const stated = { space, user: userId, sentAt: new Date(sentAt).toISOString(), roundTripMs, unsteady };
    answer = await post({ ...stated, events: [...events] });
  } catch {
    return { kind: "unreachable" };
  }
  const took = clock.steady() - before;
  if (answer.status === 401) return { kind: "signed out" };
  if (answer.status === 200 && isAnswer(answer.body)) {
    const offset = Math.round(Date.parse(answer.body.receivedAt) - sentAt - roundTripMs / 2);
    roundTripMs = Math.min(600_000, Math.max(0, Math.round(took)));
    const steady = batch.every((each) => !unsteady.includes(each.event.id));
    await applyAnswer(queue, answer.body, steady ? offset : null);
    // An answer that names none of them would otherwise be asked for again at once and for ever.
    return namesOne(answer.body, batch) ? { kind: "done" } : { kind: "unreachable" };
  }
  const isTheirs = answer.status >= 500 || answer.status === 408 || answer.status === 429;
  return isTheirs ? { kind: "unreachable" } : { kind: "refused", reason: reasonIn(answer.body) };
}

function isAnswer(body: unknown): body is DeliveryAnswer {
  return (
    typeof body === "object" &&
    body !== null &&
    "stored" in body &&
    "duplicate" in body &&
    "rejected" in body &&
    "receivedAt" in body
  );
}

function namesOne({ stored, duplicate, rejected }: DeliveryAnswer, batch: readonly Waiting<Stamped>[]): boolean {
  const named = new Set([...stored, ...duplicate, ...rejected.map(({ id }) => id)]);
  return batch.some(({ event }) => named.has(event.id));
}

function reasonIn(body: unknown): string {
  const message: unknown = typeof body === "object" && body !== null && "message" in body ? body.message : null;
  return typeof message === "string" ? message : "The server does not take these entries.";
}
