import "server-only";
import { remakeStaleContributions } from "../learning/contributions";
import { noteError } from "../note-error";
import { staleSpaces, remakeStale } from "./stale";

const EVERY_MS = 10_000;

// A development server loads this file again after each change; one worker is enough.
const kept = globalThis as typeof globalThis & { gylebookSummaryWorker?: NodeJS.Timeout };

/** Makes stale summaries anew from within the server process, as long as it runs. */
export function startSummaryWorker(): void {
  if (kept.gylebookSummaryWorker !== undefined) return;
  let isBusy = false;
  const work = async (): Promise<void> => {
    if (isBusy) return;
    isBusy = true;
    try {
      // One space after the other: row-level security shows one at a time, and whoever reads makes what they need.
      for (const id of await staleSpaces()) {
        if ((await remakeStale(id)) > 0) await remakeStaleContributions(id);
      }
    } catch (error) {
      // The database may be away for a while; what is stale stays marked.
      noteError("summaries were not made", error);
    } finally {
      isBusy = false;
    }
  };
  kept.gylebookSummaryWorker = setInterval(() => void work(), EVERY_MS);
  // It keeps no process alive that wants to end.
  kept.gylebookSummaryWorker.unref();
}
