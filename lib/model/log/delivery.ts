import { z } from "zod";
import { ranged } from "../measured";
import { recordId } from "../written";

/** The most events of one delivery. */
export const MOST_EVENTS = 100;

/**
 * A delivery as a phone sends it. Each event is looked at on its own, so that one that is wrong does not hold up the
 * others.
 */
export const deliveryInput = z.strictObject({
  space: z.string().max(64),
  /** Who wrote the events: somebody else may have signed in on the device since. */
  user: recordId,
  /** By the phone's clock, at the moment of sending. */
  sentAt: z.iso.datetime({ offset: true, error: "Time of sending is not a time" }),
  /** How long the last request took there and back; half of it is the way here. */
  roundTripMs: ranged("Time there and back", { unit: "ms", min: 0, max: 600_000 }),
  /** Events whose clock was set anew between their making and this delivery: its present error says nothing of them. */
  unsteady: z.array(z.string().max(64)).max(MOST_EVENTS),
  events: z
    .array(z.unknown())
    .min(1, "There is no event in this delivery")
    .max(MOST_EVENTS, `There are more than ${String(MOST_EVENTS)} events in this delivery; send them in several`),
});
export type Delivery = z.output<typeof deliveryInput>;
