import type { DBSchema, IDBPDatabase } from "idb";
import type { LogEntry, Stamped } from "@/lib/model/log/log-entry";
import type { LogEvent } from "@/lib/model/log/log-event";

/** An event that the server has not acknowledged yet. It leaves this store for no other reason. */
export interface Waiting<E extends Stamped = LogEvent> {
  readonly event: E;
  readonly space: string;
  readonly userId: string;
  /** Whose name stands beside it on this device. */
  readonly userName: string;
  /** Wall clock less steady clock, ms, when it was made, and in which life of the page: tells a clock that was set. */
  readonly clock: { readonly page: string; readonly ahead: number };
  /** Why the server did not take it; null while it has not been refused. */
  readonly refusal: string | null;
}

/** This device's own number, and how many events it has made. */
export interface DeviceCount {
  readonly id: string;
  readonly made: number;
}

/** What every database has that is a queue to the server: that of brew days, and that of tastings. */
export interface QueueSchema<E extends Stamped> extends DBSchema {
  readonly waiting: { readonly key: string; readonly value: Waiting<E>; readonly indexes: { readonly user: string } };
  readonly acknowledged: { readonly key: string; readonly value: { readonly id: string; readonly entry: LogEntry<E> } };
  readonly device: { readonly key: "this"; readonly value: DeviceCount };
}

/** A queue of events to the server. */
export interface Queue<E extends Stamped> {
  readonly database: IDBPDatabase<QueueSchema<E>>;
  /** Where an event belongs, under the name that the database's index has for it. */
  readonly placeOf: (event: E) => object;
}

/** On the disk before it is called kept, and not only in the memory of the system. */
export const STRICT = { durability: "strict" } as const;
