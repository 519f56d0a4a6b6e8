import "server-only";
import { setTimeout as delay } from "node:timers/promises";
import {
  countBetween,
  entriesBehind,
  lookedBack,
  MOST_AT_ONCE,
  presentPlace,
  type BrewKey,
  type NewEntry,
  type Place,
} from "./new-entries";
import { noteError } from "../note-error";

type Listener = (entries: readonly NewEntry[]) => void;

const POLL_MS = 1000;

/** What is new at one brew, asked of the database once for everybody who watches it from this process. */
class BrewFeed {
  readonly #key: BrewKey;
  readonly #listeners = new Set<Listener>();
  readonly #stop = new AbortController();
  /** Times of receipt of what was told, by identifier, as far back as is looked. */
  readonly #told = new Map<string, string>();
  #place: Place | null = null;

  constructor(key: BrewKey) {
    this.#key = key;
  }

  get isWatched(): boolean {
    return this.#listeners.size > 0;
  }

  add(listener: Listener): void {
    this.#listeners.add(listener);
  }

  remove(listener: Listener): void {
    this.#listeners.delete(listener);
    if (!this.isWatched) this.#stop.abort();
  }

  async run(): Promise<void> {
    while (!this.#stop.signal.aborted) {
      try {
        await this.#look();
      } catch (error) {
        // The database may be away for a while; what comes in meanwhile is told afterwards.
        noteError("a brew was not looked at", error);
      }
      await delay(POLL_MS, undefined, { signal: this.#stop.signal, ref: false }).catch(() => undefined);
    }
  }

  async #look(): Promise<void> {
    if (this.#place === null) {
      // What was received before is the reader's to ask for, and is noted so as not to be taken for late.
      const present = await presentPlace(this.#key.spaceId);
      await this.#readFrom(lookedBack(present), present);
      this.#place = present;
    }
    await this.#tellLate(this.#place);
    await this.#tellNew(this.#place);
    this.#forget();
  }

  /** What was committed after something that was received later: there are more of the time before than were told. */
  async #tellLate(place: Place): Promise<void> {
    const from = lookedBack(place);
    const known = [...this.#told.values()].filter((at) => at > from.at && at <= place.at).length;
    if ((await countBetween(this.#key, from, place)) !== known) this.#tell(await this.#readFrom(from, place));
  }

  async #tellNew(place: Place): Promise<void> {
    this.#tell(await this.#readFrom(place, null));
  }

  /** Entries that were not told yet, between two places or to the end. */
  async #readFrom(from: Place, to: Place | null): Promise<readonly NewEntry[]> {
    const found: NewEntry[] = [];
    let place = from;
    for (let page = await entriesBehind(this.#key, place); page.length > 0;) {
      for (const each of page) {
        if (to !== null && isBehind(each.place, to)) return found;
        if (!this.#told.has(each.place.id)) found.push(each);
        this.#told.set(each.place.id, each.place.at);
        place = each.place;
        if (to === null) this.#place = place;
      }
      page = page.length < MOST_AT_ONCE ? [] : await entriesBehind(this.#key, place);
    }
    return found;
  }

  #tell(entries: readonly NewEntry[]): void {
    if (entries.length > 0) for (const listener of [...this.#listeners]) listener(entries);
  }

  #forget(): void {
    if (this.#place === null) return;
    const { at: from } = lookedBack(this.#place);
    for (const [id, at] of this.#told) if (at <= from) this.#told.delete(id);
  }
}

function isBehind(a: Place, b: Place): boolean {
  return a.at === b.at ? a.id > b.id : a.at > b.at;
}

// Routes and the start of the server are bundled apart; they share the feeds on the global object.
const kept = globalThis as typeof globalThis & { gylebookFeeds?: Map<string, BrewFeed> };
const feeds = (kept.gylebookFeeds ??= new Map<string, BrewFeed>());

/** Listens to what is new at a brew; the answer ends it. */
export function watchBrew(key: BrewKey, listener: Listener): () => void {
  const name = `${key.spaceId} ${key.brewId}`;
  let feed = feeds.get(name);
  if (feed === undefined) {
    feed = new BrewFeed(key);
    feeds.set(name, feed);
    feed.add(listener);
    void feed.run();
  } else feed.add(listener);
  const watched = feed;
  return () => {
    watched.remove(listener);
    if (!watched.isWatched && feeds.get(name) === watched) feeds.delete(name);
  };
}

/** How many brews this process looks at. */
export function watchedBrews(): number {
  return feeds.size;
}
