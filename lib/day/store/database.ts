import { openDB, type DBSchema, type IDBPDatabase } from "idb";
import type { DaySheet } from "@/lib/model/day-sheet";
import type { LogEntry } from "@/lib/model/log/log-entry";
import type { LogEvent } from "@/lib/model/log/log-event";

/** An event that the server has not acknowledged yet. It leaves this store for no other reason. */
export interface Waiting {
  readonly event: LogEvent;
  readonly space: string;
  readonly userId: string;
  /** Whose name stands beside it on this device. */
  readonly userName: string;
  /** Wall clock less steady clock, ms, when it was made, and in which life of the page: tells a clock that was set. */
  readonly clock: { readonly page: string; readonly ahead: number };
  /** Why the server did not take it; null while it has not been refused. */
  readonly refusal: string | null;
}

/** An entry that the server has, kept until a sheet read later holds it, so that none is ever missing from the screen. */
export interface Acknowledged {
  readonly id: string;
  readonly brewId: string;
  readonly entry: LogEntry;
}

interface DaySchema extends DBSchema {
  readonly waiting: {
    readonly key: string;
    readonly value: Waiting;
    readonly indexes: { readonly brew: string; readonly user: string };
  };
  readonly acknowledged: {
    readonly key: string;
    readonly value: Acknowledged;
    readonly indexes: { readonly brew: string };
  };
  readonly sheets: { readonly key: string; readonly value: KeptSheet; readonly indexes: { readonly user: string } };
  readonly device: { readonly key: "this"; readonly value: DeviceCount };
  readonly photos: { readonly key: string; readonly value: WaitingPhoto };
}

/** A sheet as it was last read, for one person: another who signs in on this device reads it anew. */
export interface KeptSheet {
  readonly key: string;
  readonly userId: string;
  readonly sheet: DaySheet;
}

/** A picture that is still to be sent. */
export interface WaitingPhoto {
  readonly id: string;
  readonly space: string;
  readonly brewId: string;
  readonly userId: string;
  readonly picture: Blob;
  readonly refusal: string | null;
}

/** This device's own number, and how many events it has made. */
export interface DeviceCount {
  readonly id: string;
  readonly made: number;
}

export type DayDatabase = IDBPDatabase<DaySchema>;

const VERSION = 1;

/** Opens what this device keeps. Two pages of one browser open the same. */
export function openDayDatabase(name = "gylebook-day"): Promise<DayDatabase> {
  return openDB<DaySchema>(name, VERSION, {
    upgrade(database) {
      const waiting = database.createObjectStore("waiting", { keyPath: "event.id" });
      waiting.createIndex("brew", "event.brewId");
      waiting.createIndex("user", "userId");
      database.createObjectStore("acknowledged", { keyPath: "id" }).createIndex("brew", "brewId");
      database.createObjectStore("sheets", { keyPath: "key" }).createIndex("user", "userId");
      database.createObjectStore("device");
      database.createObjectStore("photos", { keyPath: "id" });
    },
    blocking(_current, _blocked, event) {
      // A newer version of the program waits for this connection; what it holds is on the disk already.
      (event.target as IDBDatabase).close();
    },
  });
}

/** On the disk before it is called kept, and not only in the memory of the system. */
export const STRICT = { durability: "strict" } as const;
