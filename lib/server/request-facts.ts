import "server-only";
import { isIPv6 } from "node:net";
import type { RequestFacts } from "./auth";

/**
 * Who is asking, as far as it can be known. The last address of X-Forwarded-For is the one that the nearest proxy (or
 * this server itself) saw; the ones before it are whatever the client wrote.
 */
export function requestFacts(headers: Headers, reference: string | undefined): RequestFacts {
  const nearest = headers.get("x-forwarded-for")?.split(",").at(-1)?.trim() ?? "";
  return {
    ip: nearest === "" ? "unknown" : throttledAs(nearest),
    userAgent: headers.get("user-agent")?.slice(0, 300) ?? null,
    reference: reference ?? null,
  };
}

/** One subscriber has a whole IPv6 network of 64 bits, so its addresses count as one. */
function throttledAs(ip: string): string {
  if (!isIPv6(ip) || ip.startsWith("::ffff:")) return ip;
  const [head = "", tail = ""] = ip.split("::");
  const groups = head.split(":").filter((group) => group !== "");
  const rest = tail.split(":").filter((group) => group !== "");
  const missing = Array.from({ length: Math.max(0, 8 - groups.length - rest.length) }, () => "0");
  return `${[...groups, ...missing, ...rest].slice(0, 4).join(":")}::/64`;
}
