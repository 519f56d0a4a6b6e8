"use client";

import { useEffect, useState, useSyncExternalStore } from "react";
import { KettleStore, type FirstKettles, type KettleSnapshot } from "./kettle-store";
import type { VolumeView } from "./kettle-view";
import { openWorkers } from "./open-workers";

/** Many rows become ready at once; the page draws them a few times a second. */
const REDRAW_MS = 100;

/** The rows of the table, read from `address` and computed away from the page. */
export function useKettles(a: {
  readonly first: FirstKettles;
  readonly address: string;
  readonly volume: VolumeView;
}): { readonly store: KettleStore; readonly snapshot: KettleSnapshot } {
  const { first, address, volume } = a;
  const [store] = useState(
    () => new KettleStore({ fetchRows: () => fetchRows(address), openDesks: openWorkers }, first, volume),
  );
  const [subscribe] = useState(() => slowly(store.subscribe));
  const snapshot = useSyncExternalStore(subscribe, store.snapshot, store.snapshot);
  useEffect(() => {
    if (store.snapshot().state !== "read") void store.start();
    return () => {
      store.close();
    };
  }, [store]);
  useEffect(() => {
    store.setVolume(volume);
  }, [store, volume]);
  return { store, snapshot };
}

async function fetchRows(address: string): Promise<ReadableStream<Uint8Array>> {
  const response = await fetch(address);
  if (!response.ok || response.body === null) throw new Error(`the kettles could not be read: ${response.status}`);
  return response.body;
}

/** The first news at once, and then at most so often. */
function slowly(subscribe: KettleStore["subscribe"]): KettleStore["subscribe"] {
  return (listener) => {
    let waiting: ReturnType<typeof setTimeout> | null = null;
    let last = 0;
    const tell = (): void => {
      waiting = null;
      last = performance.now();
      listener();
    };
    const unsubscribe = subscribe(() => {
      waiting ??= setTimeout(tell, Math.max(0, last + REDRAW_MS - performance.now()));
    });
    return () => {
      if (waiting !== null) clearTimeout(waiting);
      unsubscribe();
    };
  };
}
