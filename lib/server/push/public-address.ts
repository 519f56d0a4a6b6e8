import "server-only";
import { lookup, type LookupAddress, type LookupOptions } from "node:dns";
import { BlockList, isIP } from "node:net";

/** Addresses that lead to this machine, its network, or nowhere: IANA's special-purpose registries. */
const CLOSED = new BlockList();
for (const [net, prefix] of [
  ...([
    ["0.0.0.0", 8],
    ["10.0.0.0", 8],
    ["100.64.0.0", 10],
    ["127.0.0.0", 8],
    ["169.254.0.0", 16],
  ] as const),
  ...([
    ["172.16.0.0", 12],
    ["192.0.0.0", 24],
    ["192.0.2.0", 24],
    ["192.88.99.0", 24],
    ["192.168.0.0", 16],
  ] as const),
  ...([
    ["198.18.0.0", 15],
    ["198.51.100.0", 24],
    ["203.0.113.0", 24],
    ["224.0.0.0", 4],
    ["240.0.0.0", 4],
  ] as const),
] as const) {
  CLOSED.addSubnet(net, prefix);
}
for (const [net, prefix] of [
  // Within 2000::/3, outside of which nothing is public.
  ...([
    ["2001::", 23],
    ["2001:db8::", 32],
    ["2002::", 16],
    ["3fff::", 20],
  ] as const),
] as const) {
  CLOSED.addSubnet(net, prefix, "ipv6");
}
const OPEN_V6 = new BlockList();
OPEN_V6.addSubnet("2000::", 3, "ipv6");

export function isPublicAddress(address: string): boolean {
  const family = isIP(address);
  if (family === 4) return !CLOSED.check(address);
  return family === 6 && OPEN_V6.check(address, "ipv6") && !CLOSED.check(address, "ipv6");
}

type Answer = (error: Error | null, address: string | LookupAddress[], family?: number) => void;

/**
 * Looks a host up for a connection, and refuses one of whose addresses any is not public. Asked by the connection
 * itself, so that no second answer of the name server can come in between.
 */
export function lookupPublic(host: string, options: LookupOptions, answer: Answer): void {
  lookup(host, { ...options, all: true }, (error, addresses) => {
    if (error !== null) answer(error, []);
    else if (addresses.length === 0 || !addresses.every(({ address }) => isPublicAddress(address))) {
      answer(new Error("the address of the push service is not public"), []);
    } else if (options.all === true) answer(null, addresses);
    else answer(null, addresses[0]?.address ?? "", addresses[0]?.family);
  });
}
