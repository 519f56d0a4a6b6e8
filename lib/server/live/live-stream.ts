import "server-only";
import type { BrewKey, NewEntry, Place } from "./new-entries";
import { entriesBehind, lookedBack, MOST_AT_ONCE, presentPlace } from "./new-entries";
import { watchBrew } from "./brew-feed";
import { noteError } from "../note-error";

export interface LiveRequest {
  readonly key: BrewKey;
  /** What the reader has; null: from now on. */
  readonly since: Place | null;
  /** Asked at every beat: whether the reader may still look. */
  readonly mayLook: () => Promise<boolean>;
  /** Aborted when the reader goes. */
  readonly signal: AbortSignal;
  readonly beatMs?: number;
}

const BEAT_MS = 15_000;
/** A reader that takes nothing any more is let go, and comes again with the place where it was. */
const MOST_WAITING = 5000;
/** Whoever has missed more reads the log anew, which is quicker than to be told. */
const MOST_MISSED = 4000;
const RETRY_MS = 2000;

// Shared with the end of the server, which is bundled apart.
const kept = globalThis as typeof globalThis & { gylebookStreams?: Set<() => void> };
const open = (kept.gylebookStreams ??= new Set<() => void>());

/** Ends every stream of this process; their readers come again, and find another one. */
export function endLiveStreams(): void {
  for (const end of [...open]) end();
}

/**
 * New entries of a brew as server-sent events. Each is told with the place of its receipt, and whoever comes again with
 * that place is told what came since, and a little of what came before: a reader knows entries by their identifiers.
 */
export function liveStream({ key, since, mayLook, signal, beatMs = BEAT_MS }: LiveRequest): ReadableStream<Uint8Array> {
  let leave: () => void = () => undefined;
  return new ReadableStream<Uint8Array>(
    {
      async start(controller) {
        const say = speaker(controller);
        const end = (): void => {
          if (say.isOver()) return;
          leave();
          controller.close();
        };
        let waiting: NewEntry[] | null = [];
        const stopWatching = watchBrew(key, (entries) => {
          if (waiting === null) say.entries(entries);
          else waiting.push(...entries);
        });
        const beat = setInterval(() => void tellBeat(say, mayLook, end), beatMs);
        beat.unref();
        leave = () => {
          say.silence();
          stopWatching();
          clearInterval(beat);
          open.delete(end);
        };
        open.add(end);
        signal.addEventListener("abort", end);
        if (signal.aborted) end();
        say.text(`retry: ${String(RETRY_MS)}\n\n`);
        try {
          await tellMissed(key, since, say);
        } catch (error) {
          noteError("a live view was not brought up to date", error);
          end();
        }
        // What came meanwhile may have been told already; the reader knows it.
        say.entries(waiting);
        waiting = null;
      },
      cancel: () => leave(),
    },
    { highWaterMark: MOST_WAITING },
  );
}

async function tellMissed(key: BrewKey, since: Place | null, say: Speaker): Promise<void> {
  let place = lookedBack(since ?? (await presentPlace(key.spaceId)));
  let told = 0;
  for (let page = await entriesBehind(key, place); page.length > 0;) {
    say.entries(page);
    told += page.length;
    if (told >= MOST_MISSED) {
      say.text("event: reload\ndata: {}\n\n");
      return;
    }
    place = page.at(-1)?.place ?? place;
    page = page.length < MOST_AT_ONCE ? [] : await entriesBehind(key, place);
  }
}

async function tellBeat(say: Speaker, mayLook: () => Promise<boolean>, end: () => void): Promise<void> {
  try {
    if (say.isStuck()) end();
    else if (await mayLook()) say.text(`event: beat\ndata: {"at":"${new Date().toISOString()}"}\n\n`);
    else {
      say.text("event: over\ndata: {}\n\n");
      end();
    }
  } catch {
    // Who cannot be asked for is not let look on.
    end();
  }
}

interface Speaker {
  readonly text: (text: string) => void;
  readonly entries: (entries: readonly NewEntry[]) => void;
  readonly silence: () => void;
  readonly isOver: () => boolean;
  /** Whether so much waits for the reader that it seems to take nothing any more. */
  readonly isStuck: () => boolean;
}

function speaker(controller: ReadableStreamDefaultController<Uint8Array>): Speaker {
  const encoder = new TextEncoder();
  let isOver = false;
  const text = (words: string): void => {
    if (!isOver) controller.enqueue(encoder.encode(words));
  };
  return {
    text,
    entries: (entries) => {
      for (const { place, entry } of entries) {
        if (entry !== null) text(`id: ${place.at}\nevent: entry\ndata: ${JSON.stringify(entry)}\n\n`);
      }
    },
    silence: () => {
      isOver = true;
    },
    isOver: () => isOver,
    isStuck: () => (controller.desiredSize ?? 0) <= 0,
  };
}
