import "server-only";
import { cookies, headers } from "next/headers";
import { PRIMARY, replica, server } from "./database/servers";
import { environment } from "./environment";

/** What a reader has to be shown at least: what was written up to a place of the database's log, nothing yet, or all. */
export type Seen = { readonly lsn: string } | "nothing" | "all";

/** A standby that is further behind than this is told by its lag, and nobody comes back to an older page of their own. */
const REMEMBERED_S = 30;
const LSN = /^[0-9A-F]{1,8}\/[0-9A-F]{1,8}$/;

function cookieName(): string {
  return environment.appOrigin?.startsWith("https://") === true ? "__Host-gylebook-written" : "gylebook-written";
}

/** Where the database's log was after what this process has written just now. */
export async function placeOfWrite(): Promise<string | null> {
  const [found] = await server(PRIMARY).$queryRaw<{ lsn: string }[]>`SELECT pg_current_wal_flush_lsn()::text AS lsn`;
  return found?.lsn ?? null;
}

/**
 * Leaves with the browser where the log was after its write. It is not signed: who changes it waits longer or is shown
 * something older, and nobody else.
 */
export async function rememberWrite(): Promise<void> {
  if (replica() === null) return;
  const lsn = await placeOfWrite();
  const isSecure = environment.appOrigin?.startsWith("https://") === true;
  if (lsn === null) return;
  const options = { httpOnly: true, sameSite: "lax", path: "/", secure: isSecure, maxAge: REMEMBERED_S } as const;
  (await cookies()).set(cookieName(), lsn, options);
}

/** What the present reader wrote lately, as their browser says. Programs keep no cookies and are shown all there is. */
export async function seenSoFar(): Promise<Seen> {
  try {
    if ((await headers()).has("authorization")) return "all";
    const told = (await cookies()).get(cookieName())?.value;
    if (told === undefined) return "nothing";
    return LSN.test(told) ? { lsn: told } : "all";
  } catch {
    // Outside of a request nobody says what they have written.
    return "all";
  }
}
