import "server-only";
import { dispatchAlarms } from "./dispatch";
import { noteError } from "../note-error";

const EVERY_MS = 2000;

// A development server loads this file again after each change; one worker is enough.
const kept = globalThis as typeof globalThis & { gylebookAlarmWorker?: NodeJS.Timeout };

/** Wakes browsers from within the server process, as long as it runs. */
export function startAlarmWorker(): void {
  if (kept.gylebookAlarmWorker !== undefined) return;
  let isBusy = false;
  const work = async (): Promise<void> => {
    if (isBusy) return;
    isBusy = true;
    try {
      await dispatchAlarms();
    } catch (error) {
      // The database may be away for a while; what is due stays due.
      noteError("alarms were not dispatched", error);
    } finally {
      isBusy = false;
    }
  };
  kept.gylebookAlarmWorker = setInterval(() => void work(), EVERY_MS);
  // It keeps no process alive that wants to end.
  kept.gylebookAlarmWorker.unref();
}
