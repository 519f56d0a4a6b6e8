import type { LogEntry } from "@/lib/model/log/log-entry";

export interface ServerEvent {
  readonly event: string;
  readonly id: string | null;
  readonly data: string;
}

export interface LiveReader {
  readonly events: readonly ServerEvent[];
  /** Identifiers of the entries so far, each once, in the order in which they were told first. */
  readonly ids: () => readonly string[];
  readonly lastId: () => string | null;
  readonly until: (is: (events: readonly ServerEvent[]) => boolean) => Promise<void>;
  readonly ended: Promise<void>;
  readonly stop: () => Promise<void>;
}

const PATIENCE_MS = 10_000;

/** Reads server-sent events as the HTML standard has a browser read them: blocks of lines, ended by an empty one. */
export function readLive(stream: ReadableStream<Uint8Array>): LiveReader {
  const reader = stream.getReader();
  const events: ServerEvent[] = [];
  const ended = (async () => {
    const decoder = new TextDecoder();
    let text = "";
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      text += decoder.decode(part.value, { stream: true });
      const blocks = text.split("\n\n");
      text = blocks.pop() ?? "";
      events.push(...blocks.flatMap(eventOf));
    }
  })();
  const entries = () => events.filter(({ event }) => event === "entry");
  return {
    events,
    ids: () => [...new Set(entries().map(({ data }) => (JSON.parse(data) as LogEntry).event.id))],
    lastId: () => entries().at(-1)?.id ?? null,
    async until(is) {
      const begun = Date.now();
      while (!is(events)) {
        if (Date.now() - begun > PATIENCE_MS) throw new Error(`not told within ${String(PATIENCE_MS / 1000)} s`);
        await new Promise((waited) => setTimeout(waited, 20));
      }
    },
    ended,
    stop: () => reader.cancel(),
  };
}

function eventOf(block: string): readonly ServerEvent[] {
  const fields = new Map(block.split("\n").map((line) => /^(\w+): (.*)$/.exec(line)?.slice(1) as [string, string]));
  const data = fields.get("data");
  if (data === undefined) return [];
  return [{ event: fields.get("event") ?? "message", id: fields.get("id") ?? null, data }];
}
