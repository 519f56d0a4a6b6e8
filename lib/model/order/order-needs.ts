import type { Need } from "./recipe-needs";
import { thingKey, type OrderThing } from "./order-words";

/** What one sheet needs. */
export interface SheetNeeds {
  readonly userId: string;
  /** What the sheet is called in an order: recipe and kettle. */
  readonly label: string;
  readonly brewId: string | null;
  readonly needs: readonly Need[];
}

/** An amount of one thing that somebody has or wants. */
export interface Held {
  readonly userId: string;
  readonly thing: OrderThing;
  readonly amount: number;
}

/** An agreed substitution. */
export interface Instead {
  readonly userId: string;
  readonly from: OrderThing;
  readonly to: OrderThing;
  readonly ratio: number;
}

/** A part of a need and where it comes from. */
export interface NeedSource {
  readonly label: string;
  readonly brewId: string | null;
  readonly amount: number;
}

/** What one member needs of one thing, in whole units. */
export interface MemberNeed {
  readonly userId: string;
  readonly sources: readonly NeedSource[];
  /** Sum of the sources. */
  readonly needed: number;
  /** Of that, on hand already. */
  readonly onHand: number;
  /** Wanted beside it. */
  readonly wanted: number;
  /** What is to be bought: needed less on hand, and wanted. */
  readonly amount: number;
}

export interface ThingNeeds {
  readonly thing: OrderThing;
  readonly members: readonly MemberNeed[];
}

interface NeedsOf {
  readonly sheets: readonly SheetNeeds[];
  readonly wants: readonly Held[];
  readonly onHand: readonly Held[];
  readonly instead: readonly Instead[];
}

/**
 * What everybody needs of everything. Each sum is rounded up to whole units for each member; stock is used before anything is
 * replaced or bought, and what somebody wants beside their sheets is bought whatever they have.
 */
export function orderNeeds({ sheets, wants, onHand, instead }: NeedsOf): readonly ThingNeeds[] {
  const things = new Map<string, OrderThing>();
  const users = new Set([...sheets, ...wants].map(({ userId }) => userId));
  const found = new Map<string, MemberNeed[]>();
  for (const userId of users) {
    const of = <R extends { readonly userId: string }>(rows: readonly R[]): readonly R[] =>
      rows.filter((row) => row.userId === userId);
    const mine = { sheets: of(sheets), wants: of(wants), onHand: of(onHand), instead: of(instead) };
    for (const { thing, ...need } of memberNeeds(mine)) {
      const key = thingKey(thing);
      if (!things.has(key)) things.set(key, thing);
      found.set(key, [...(found.get(key) ?? []), { userId, ...need }]);
    }
  }
  return [...things].map(([key, thing]) => ({ thing, members: found.get(key) ?? [] }));
}

interface OneNeed extends Omit<MemberNeed, "userId"> {
  readonly thing: OrderThing;
}

function memberNeeds({ sheets, wants, onHand, instead }: NeedsOf): readonly OneNeed[] {
  const rows = new Map<string, { readonly thing: OrderThing; readonly sources: NeedSource[] }>();
  const rowOf = (thing: OrderThing): NeedSource[] => {
    const key = thingKey(thing);
    const row = rows.get(key) ?? { thing, sources: [] };
    rows.set(key, row);
    return row.sources;
  };
  for (const { label, brewId, needs } of sheets) {
    for (const { thing, amount } of merged(needs)) rowOf(thing).push({ label, brewId, amount });
  }
  const stock = amountsByThing(onHand);
  // What is replaced is what stock does not cover; stock of the other thing then counts against it.
  for (const { from, to, ratio } of instead) {
    const sources = rowOf(from);
    const lacking = Math.max(0, sumOf(sources) - (stock.get(thingKey(from)) ?? 0));
    if (lacking === 0) continue;
    rowOf(to).push({ label: `in place of ${from.name}`, brewId: null, amount: lacking * ratio });
    sources.push({ label: `replaced by ${to.name}`, brewId: null, amount: -lacking });
  }
  for (const { thing } of wants) rowOf(thing);
  const wanted = amountsByThing(wants);
  return [...rows.values()].map(({ thing, sources }) => {
    const needed = wholeUnits(sumOf(sources));
    const has = Math.min(needed, Math.floor(stock.get(thingKey(thing)) ?? 0));
    const beside = wanted.get(thingKey(thing)) ?? 0;
    return { thing, sources, needed, onHand: has, wanted: beside, amount: needed - has + beside };
  });
}

/** A recipe may use one hop at three times: that is one line of an order. */
function merged(needs: readonly Need[]): readonly Need[] {
  const sums = new Map<string, Need>();
  for (const { thing, amount } of needs) {
    const key = thingKey(thing);
    sums.set(key, { thing: sums.get(key)?.thing ?? thing, amount: (sums.get(key)?.amount ?? 0) + amount });
  }
  return [...sums.values()];
}

function amountsByThing(held: readonly Held[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { thing, amount } of held) sums.set(thingKey(thing), (sums.get(thingKey(thing)) ?? 0) + amount);
  return sums;
}

function sumOf(sources: readonly NeedSource[]): number {
  return sources.reduce((sum, { amount }) => sum + amount, 0);
}

/** Rounded up, but not for what floating point adds to a whole sum. */
function wholeUnits(amount: number): number {
  return Math.max(0, Math.ceil(amount - 1e-6));
}
