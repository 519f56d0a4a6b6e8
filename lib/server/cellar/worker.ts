import "server-only";
import { remindBrewers } from "./remind";
import { noteError } from "../note-error";

/** A fermentation takes days: a quarter of an hour is soon enough. */
const EVERY_MS = 15 * 60_000;

// A development server loads this file again after each change; one worker is enough.
const kept = globalThis as typeof globalThis & { gylebookCellarWorker?: NodeJS.Timeout };

/** Looks at the fermentations from within the server process, as long as it runs. */
export function startCellarWorker(): void {
  if (kept.gylebookCellarWorker !== undefined) return;
  const work = async (): Promise<void> => {
    try {
      await remindBrewers(new Date());
    } catch (error) {
      // The database may be away for a while; what is due stays due.
      noteError("nobody was reminded", error);
    }
  };
  kept.gylebookCellarWorker = setInterval(() => void work(), EVERY_MS);
  // It keeps no process alive that wants to end.
  kept.gylebookCellarWorker.unref();
}
