const BASE = "http://own.invalid";

/** A path of this service to go on to, from a link that anybody may have written; "/" when it leads elsewhere. */
export function safePath(wanted: string | null | undefined): string {
  if (wanted === null || wanted === undefined || !wanted.startsWith("/")) return "/";
  // Resolved as a browser would: it drops tabs and newlines and reads a backslash as a slash.
  const url = URL.parse(wanted, BASE);
  if (url?.origin !== BASE || url.pathname.startsWith("//")) return "/";
  return url.pathname + url.search + url.hash;
}
