import { openDB, type DBSchema, type IDBPDatabase } from "idb";
import type { DaySheet } from "@/lib/model/day-sheet";
import type { LogEntry } from "@/lib/model/log/log-entry";
import type { LogEvent } from "@/lib/model/log/log-event";
import type { DeviceCount, Queue, Waiting } from "./queue";

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

/** What is logged at brews, as a queue to the server. */
export function dayQueue(database: DayDatabase): Queue<LogEvent> {
  return {
    // It has these stores in this form, beside others; the types of the library know no "at least".
    database: database as unknown as Queue<LogEvent>["database"],
    placeOf: ({ brewId }) => ({ brewId }),
  };
}
