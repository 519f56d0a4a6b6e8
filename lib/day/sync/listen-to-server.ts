import type { LogEntry } from "@/lib/model/log/log-entry";
import type { DaySession } from "./day-session";

const SHORTEST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 60_000;

/** What others log comes as it happens. The connection is made anew after a while when it breaks. */
export function listenToServer(session: DaySession): () => void {
  let source: EventSource | null = null;
  let wait = SHORTEST_WAIT_MS;
  let timer: ReturnType<typeof setTimeout> | null = null;
  const together = inBatches((entries) => void session.take(entries));
  function connect(): void {
    const { sheet } = session.snapshot();
    if (sheet === null) {
      timer = setTimeout(connect, SHORTEST_WAIT_MS);
      return;
    }
    source = new EventSource(`/api/brew-day/${sheet.space.slug}/${sheet.brew.id}/live`);
    source.onopen = () => {
      wait = SHORTEST_WAIT_MS;
    };
    source.addEventListener("entry", ({ data }: MessageEvent<string>) => together(JSON.parse(data) as LogEntry));
    // Too much was missed to be told one by one.
    source.addEventListener("reload", () => void session.refresh());
    source.addEventListener("over", () => {
      source?.close();
      void session.refresh();
    });
    source.onerror = () => {
      // The browser tries again by itself only while it takes the answer for one; a refusal ends it.
      if (source?.readyState !== EventSource.CLOSED) return;
      source.close();
      timer = setTimeout(connect, wait * (0.5 + Math.random()));
      wait = Math.min(LONGEST_WAIT_MS, wait * 2);
    };
  }
  connect();
  return () => {
    if (timer !== null) clearTimeout(timer);
    source?.close();
  };
}

const BATCH_MS = 50;

/** What comes in quick succession is taken together, and the screen drawn once. */
function inBatches(take: (entries: readonly LogEntry[]) => void): (entry: LogEntry) => void {
  let batch: LogEntry[] = [];
  return (entry) => {
    if (batch.push(entry) > 1) return;
    setTimeout(() => {
      take(batch);
      batch = [];
    }, BATCH_MS);
  };
}
