import "server-only";
import { environment } from "../environment";

/** Whether this service sends mail at all, for a page that offers it. */
export function isMailSent(): boolean {
  return environment.mail !== null;
}
