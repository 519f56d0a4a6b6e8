import { newId } from "@/lib/ui/brew/new-id";

/** The two clocks of a device: the wall clock, which somebody may set, and one that only ever goes on. */
export interface DeviceClock {
  readonly now: () => number;
  readonly steady: () => number;
  /** Tells one life of a page from the next; the steady clock begins anew with each. */
  readonly page: string;
}

export function browserClock(): DeviceClock {
  return { now: () => Date.now(), steady: () => performance.now(), page: newId() };
}

/** Beyond this the wall clock was set; two clocks of one device drift less in a day. */
const SET_ANEW_MS = 5000;

/** Whether the wall clock was set since an event was made, as far as this page can tell. */
export function wasSet(made: { readonly page: string; readonly ahead: number }, clock: DeviceClock): boolean {
  return made.page === clock.page && Math.abs(clock.now() - clock.steady() - made.ahead) > SET_ANEW_MS;
}
