import "server-only";
import { operations } from "./operations";

/**
 * Tells the operator of something that went wrong: in the log of a server, else where a command prints. Never the text of
 * a request, and of an error only what the log takes.
 */
export function noteError(event: string, error: unknown, facts: object = {}): void {
  const told = operations();
  if (told === null) {
    console.error(`${event}:`, error);
    return;
  }
  told.count("gylebook_errors_total", { event });
  told.log("error", event, { ...facts, ...told.factsOf(error) });
}
