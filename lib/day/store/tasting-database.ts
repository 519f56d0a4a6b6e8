import { openDB, type DBSchema, type IDBPDatabase } from "idb";
import type { JudgeSheet, TastingEntry } from "@/lib/model/tasting/judge-sheet";
import type { TastingEvent } from "@/lib/model/tasting/sheet-event";
import type { DeviceCount, Queue, Waiting } from "./queue";

/** A judge's sheets as they were last read, for one person. */
interface KeptJudgeSheet {
  readonly key: string;
  readonly userId: string;
  readonly sheet: JudgeSheet;
}

interface TastingSchema extends DBSchema {
  readonly waiting: {
    readonly key: string;
    readonly value: Waiting<TastingEvent>;
    readonly indexes: { readonly tasting: string; readonly user: string };
  };
  readonly acknowledged: {
    readonly key: string;
    readonly value: { readonly id: string; readonly tastingId: string; readonly entry: TastingEntry };
    readonly indexes: { readonly tasting: string };
  };
  readonly sheets: { readonly key: string; readonly value: KeptJudgeSheet };
  readonly device: { readonly key: "this"; readonly value: DeviceCount };
}

export type TastingDatabase = IDBPDatabase<TastingSchema>;

const VERSION = 1;

/**
 * Opens what this device keeps of tastings. It is not the database of the brew day: that page may be of an older version,
 * kept until somebody taps for the newer, and knows neither these events nor where they go.
 */
export function openTastingDatabase(name = "gylebook-tasting"): Promise<TastingDatabase> {
  return openDB<TastingSchema>(name, VERSION, {
    upgrade(database) {
      const waiting = database.createObjectStore("waiting", { keyPath: "event.id" });
      waiting.createIndex("tasting", "event.tastingId");
      waiting.createIndex("user", "userId");
      database.createObjectStore("acknowledged", { keyPath: "id" }).createIndex("tasting", "tastingId");
      database.createObjectStore("sheets", { keyPath: "key" });
      database.createObjectStore("device");
    },
    blocking(_current, _blocked, event) {
      // A newer version of the program waits for this connection; what it holds is on the disk already.
      (event.target as IDBDatabase).close();
    },
  });
}

/** What judges write, as a queue to the server. */
export function tastingQueue(database: TastingDatabase): Queue<TastingEvent> {
  return {
    // It has these stores in this form, beside others; the types of the library know no "at least".
    database: database as unknown as Queue<TastingEvent>["database"],
    placeOf: ({ tastingId }) => ({ tastingId }),
  };
}
