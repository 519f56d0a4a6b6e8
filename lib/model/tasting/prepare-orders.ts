import { servingOrders, type ServingBalance } from "@/lib/calc/judging";

interface KnownEntry {
  readonly entryNo: number;
  /** Members who brewed it or helped. */
  readonly brewerIds: readonly string[];
}

export interface FlightToServe {
  readonly entries: readonly KnownEntry[];
  readonly judgeIds: readonly string[];
  /** null where everybody tastes all that they may. */
  readonly palateLimit: number | null;
  readonly seed: number;
}

export interface JudgeOrder {
  readonly judgeId: string;
  /** In the order of tasting. */
  readonly entryNos: readonly number[];
}

export type FlightOrders =
  | {
      readonly ok: true;
      readonly orders: readonly JudgeOrder[];
      /** What the orders were computed from, for the explanation. */
      readonly asked: Parameters<typeof servingOrders>[0];
      readonly each: number;
      readonly balance: ServingBalance;
    }
  | { readonly ok: false; readonly reason: "no-entries" | "no-judges" }
  /** Every entry of the flight is this judge's own. */
  | { readonly ok: false; readonly reason: "all-own"; readonly judgeId: string };

/** The entries of a flight that somebody brewed, or helped to brew. */
export function ownEntries(entries: readonly KnownEntry[], userId: string): readonly number[] {
  return entries.flatMap(({ entryNo, brewerIds }) => (brewerIds.includes(userId) ? [entryNo] : []));
}

/**
 * In which order each judge of a scored flight tastes. Nobody gets an own beer, and all get the same number, so that a
 * short list tells nothing. Entries and judges are taken by their numbers, never in the order in which they came.
 */
export function flightOrders({ entries, judgeIds, palateLimit, seed }: FlightToServe): FlightOrders {
  if (entries.length === 0) return { ok: false, reason: "no-entries" };
  if (judgeIds.length === 0) return { ok: false, reason: "no-judges" };
  const sorted = [...entries].sort((a, b) => a.entryNo - b.entryNo);
  const judges = [...judgeIds].sort();
  const withheld = judges.map((judgeId) => {
    const own = ownEntries(sorted, judgeId);
    return sorted.flatMap(({ entryNo }, at) => (own.includes(entryNo) ? [at] : []));
  });
  const conflicted = judges.find((_, at) => withheld[at]?.length === sorted.length);
  if (conflicted !== undefined) return { ok: false, reason: "all-own", judgeId: conflicted };

  const asked = {
    ...{ entries: sorted.length, judges: judges.length, seed, without: withheld },
    ...(palateLimit === null ? {} : { palateLimit }),
  };
  const { orders, balance } = servingOrders(asked);
  const named = orders.map((order, at) => ({
    judgeId: judges[at] ?? "",
    entryNos: order.map((entry) => sorted[entry]?.entryNo ?? 0),
  }));
  return { ok: true, orders: named, asked, each: orders[0]?.length ?? 0, balance };
}
