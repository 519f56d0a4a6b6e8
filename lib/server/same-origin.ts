import "server-only";

interface RequestOrigin {
  readonly origin: string | null;
  readonly host: string | null;
  readonly fetchSite: string | null;
}

export function originOf(headers: Headers): RequestOrigin {
  return { origin: headers.get("origin"), host: headers.get("host"), fetchSite: headers.get("sec-fetch-site") };
}

/**
 * Whether a changing request comes from our own pages. A request without an Origin is refused: every browser sends one
 * with a POST. The allowed origin is configured, because Host and X-Forwarded-Host are the client's to choose; only a
 * development server without a configured origin falls back on Host.
 */
export function isSameOrigin({ origin, host, fetchSite }: RequestOrigin, allowed: string | null): boolean {
  if (fetchSite !== null && fetchSite !== "same-origin") return false;
  if (origin === null) return false;
  if (allowed !== null) return origin === allowed;
  return host !== null && (origin === `http://${host}` || origin === `https://${host}`);
}
