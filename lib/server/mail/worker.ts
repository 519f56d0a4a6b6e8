import "server-only";
import { environment } from "../environment";
import { dispatchMail } from "./dispatch";
import { createMailer } from "./mailer";
import { noteError } from "../note-error";

const EVERY_MS = 10_000;

// A development server loads this file again after each change; one worker is enough.
const kept = globalThis as typeof globalThis & { gylebookMailWorker?: NodeJS.Timeout };

/** Sends mail from within the server process, as long as it runs; without an SMTP server there is nothing to do. */
export function startMailWorker(): void {
  if (environment.mail === null || kept.gylebookMailWorker !== undefined) return;
  const mailer = createMailer(environment.mail);
  let isBusy = false;
  const work = async (): Promise<void> => {
    if (isBusy) return;
    isBusy = true;
    try {
      await dispatchMail(mailer);
    } catch (error) {
      // The database may be away for a while; what is in the outbox stays there.
      noteError("mail was not dispatched", error);
    } finally {
      isBusy = false;
    }
  };
  kept.gylebookMailWorker = setInterval(() => void work(), EVERY_MS);
  // It keeps no process alive that wants to end.
  kept.gylebookMailWorker.unref();
}
