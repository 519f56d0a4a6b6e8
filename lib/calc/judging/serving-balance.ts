import { connectedGroups } from "./connected-groups";

/** Fewest and most of a count over all that it is counted for. */
export interface Spread {
  readonly fewest: number;
  readonly most: number;
}

/** How even a set of serving orders is; a count is balanced where fewest and most are the same. */
export interface ServingBalance {
  /** Judges that taste an entry. */
  readonly tastings: Spread;
  /** Times that an entry stands in a place of the order. */
  readonly places: Spread;
  /** Times that one entry is tasted straight after another, over all ordered pairs. */
  readonly successions: Spread;
  /** Judges that taste both of two entries, over all pairs. */
  readonly together: Spread;
  /** Whether all entries can be compared through judges that they share. */
  readonly connected: boolean;
}

/**
 * Counts how even serving orders are.
 *
 * @param orders - For each judge the entries, counted from zero, in the order of tasting; all of one length.
 * @returns Fewest and most of each count.
 */
export function servingBalance(orders: readonly (readonly number[])[], entries: number): ServingBalance {
  const length = orders[0]?.length ?? 0;
  const tastings = new Array<number>(entries).fill(0);
  const places = new Array<number>(entries * length).fill(0);
  const successions = new Array<number>(entries * entries).fill(0);
  const together = new Array<number>(entries * entries).fill(0);
  const bump = (counts: number[], at: number): number => (counts[at] = (counts[at] ?? 0) + 1);
  for (const order of orders) {
    order.forEach((entry, place) => {
      bump(tastings, entry);
      bump(places, entry * length + place);
      const next = order[place + 1];
      if (next !== undefined) bump(successions, entry * entries + next);
      for (const other of order) bump(together, entry * entries + other);
    });
  }
  const unlike = (_: number, at: number): boolean => Math.floor(at / entries) !== at % entries;
  return {
    tastings: spread(tastings),
    places: spread(places),
    successions: spread(successions.filter(unlike)),
    together: spread(together.filter(unlike)),
    connected: connectedGroups(orders, entries).length === 1,
  };
}

// A single entry has no pairs; its counts are none.
function spread(counts: readonly number[]): Spread {
  if (counts.length === 0) return { fewest: 0, most: 0 };
  return { fewest: Math.min(...counts), most: Math.max(...counts) };
}
