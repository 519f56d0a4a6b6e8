import type { AdaptationChoice } from "@/lib/model/adaptation";
import type { KeptChoice, KettleEntry, KettlesHead } from "@/lib/model/kettle-entry";
import type { ExplainableNumber, ExplainedCell, FitDetail, FromDesk, ToDesk } from "./desk-messages";
import type { KettleFigures } from "./kettle-figures";
import type { VolumeView } from "./kettle-view";
import { readLines } from "./read-lines";

/** What the page shows at one moment. It is replaced, never changed. */
export interface KettleSnapshot {
  readonly entries: readonly KettleEntry[];
  /** How many rows and how many kettles the whole table has, also before their names are here. */
  readonly rowCount: number;
  readonly kettleCount: number;
  readonly figures: ReadonlyMap<string, KettleFigures>;
  /** Kettles that are computed, at least without their intervals. */
  readonly computed: number;
  readonly state: "waiting" | "reading" | "read" | "failed";
}

/** What the server sent with the page. */
export interface FirstKettles {
  readonly entries: readonly KettleEntry[];
  readonly rowCount: number;
  readonly kettleCount: number;
  readonly figures: readonly (readonly [id: string, figures: KettleFigures])[];
}

/** The world of the store: where the kettles are read, and who computes. */
export interface KettleSources {
  readonly fetchRows: () => Promise<ReadableStream<Uint8Array>>;
  readonly openDesks: (receive: (message: FromDesk) => void, fail: () => void) => Desks;
}

/** Those who compute, each with rows of its own. */
export interface Desks {
  readonly count: number;
  readonly send: (desk: number, message: ToDesk) => void;
  readonly close: () => void;
}

/** A chunk of the wire is handed on in so many lines at most, so that several desks share it. */
const LINES_AT_ONCE = 20;

/** The rows of the table as they come, with the desks that compute them. One for each opened page. */
export class KettleStore {
  private shown: KettleSnapshot;
  private readonly figures: Map<string, KettleFigures>;
  private readonly listeners = new Set<() => void>();
  private desks: Desks | null = null;
  private readonly deskOf = new Map<string, number>();
  private readonly questions = new Map<number, (answer: ExplainedCell | FitDetail | null) => void>();
  private started: Promise<void> | null = null;
  private run = 0;
  private volume: VolumeView;

  constructor(
    private readonly sources: KettleSources,
    first: FirstKettles,
    volume: VolumeView,
  ) {
    this.volume = volume;
    this.figures = new Map(first.figures);
    const { entries, rowCount, kettleCount } = first;
    this.shown = {
      entries,
      rowCount,
      kettleCount,
      figures: this.figures,
      computed: this.figures.size,
      state: this.figures.size === kettleCount && entries.length === rowCount ? "read" : "waiting",
    };
  }

  readonly snapshot = (): KettleSnapshot => this.shown;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Reads and computes what is not there; once, and again after a failure. */
  readonly start = (): Promise<void> => {
    this.started ??= this.read().catch(() => {
      this.fail();
    });
    return this.started;
  };

  /** Ends the computing; what is there stays, and another start reads anew. */
  close(): void {
    this.desks?.close();
    this.desks = null;
    this.started = null;
    this.deskOf.clear();
  }

  private fail(): void {
    this.close();
    for (const answer of this.questions.values()) answer(null);
    this.questions.clear();
    this.show({ state: "failed" });
  }

  /** The rows in view are computed first. */
  readonly look = (ids: readonly string[]): void => {
    this.sendAll({ kind: "look", ids });
  };

  setVolume(volume: VolumeView): void {
    if (volume === this.volume) return;
    this.volume = volume;
    this.run++;
    this.figures.clear();
    this.show({ computed: 0 });
    this.sendAll({ kind: "volume", run: this.run, volume });
    void this.start();
  }

  /** A choice that was kept; its row is computed anew. */
  readonly keep = (id: string, kept: KeptChoice): void => {
    const entries = this.shown.entries.map((entry) => (entry.key === id ? { ...entry, kept } : entry));
    this.show({ entries });
    this.send(id, { kind: "keep", id, choice: kept.choice });
  };

  /** The same with what somebody else chose, if it is later than what is shown. */
  readonly keepLater = async (id: string, kept: KeptChoice): Promise<void> => {
    const shown = this.shown.entries.find(({ key }) => key === id)?.kept?.lockVersion ?? 0;
    if (kept.lockVersion <= shown) return;
    // What came computed with the page is computed anew only by a desk that is told so.
    if (!this.deskOf.has(id)) await this.start();
    this.keep(id, kept);
  };

  async explain(id: string, number: ExplainableNumber): Promise<ExplainedCell | null> {
    return (await this.ask(id, (request) => ({ kind: "explain", request, id, number }))) as ExplainedCell | null;
  }

  async detail(id: string): Promise<FitDetail | null> {
    return (await this.ask(id, (request) => ({ kind: "detail", request, id }))) as FitDetail | null;
  }

  private async ask(id: string, message: (request: number) => ToDesk): Promise<ExplainedCell | FitDetail | null> {
    // What its desk knows already is answered while the others are still being read.
    if (!this.deskOf.has(id)) await this.start();
    const request = this.questions.size === 0 ? 1 : Math.max(...this.questions.keys()) + 1;
    return new Promise((resolve) => {
      this.questions.set(request, resolve);
      if (!this.send(id, message(request))) resolve(null);
    });
  }

  private send(id: string, message: ToDesk): boolean {
    const desk = this.deskOf.get(id);
    if (desk === undefined || this.desks === null) return false;
    this.desks.send(desk, message);
    return true;
  }

  private sendAll(message: ToDesk): void {
    for (let desk = 0; desk < (this.desks?.count ?? 0); desk++) this.desks?.send(desk, message);
  }

  private async read(): Promise<void> {
    this.show({ state: "reading" });
    const desks = this.sources.openDesks(
      (message) => {
        this.receive(message);
      },
      () => {
        if (this.desks === desks) this.fail();
      },
    );
    this.desks = desks;
    let isHead = true;
    let next = 0;
    for await (const lines of readLines(await this.sources.fetchRows())) {
      if (this.desks !== desks) return;
      const kettles = isHead ? lines.slice(1) : lines;
      if (isHead && lines[0] !== undefined) this.open(JSON.parse(lines[0]) as KettlesHead);
      isHead = false;
      for (let start = 0; start < kettles.length; start += LINES_AT_ONCE) {
        this.hand(kettles.slice(start, start + LINES_AT_ONCE), next);
        next = (next + 1) % desks.count;
      }
    }
    this.show({ state: "read" });
  }

  private open({ content, entries }: KettlesHead): void {
    const kept = entries.flatMap((entry): (readonly [string, AdaptationChoice])[] =>
      entry.kept === null ? [] : [[entry.key, entry.kept.choice]],
    );
    const kettleCount = entries.filter(({ kettleName }) => kettleName !== null).length;
    const { run, volume } = this;
    const done = [...this.figures].flatMap(([id, { intervals }]) => (intervals === null ? [] : [id]));
    this.sendAll({ kind: "open", run, content, volume, kept, done });
    this.show({ entries, rowCount: entries.length, kettleCount });
  }

  private hand(lines: readonly string[], desk: number): void {
    for (const line of lines) this.deskOf.set(idIn(line), desk);
    this.desks?.send(desk, { kind: "kettles", lines });
  }

  private receive(message: FromDesk): void {
    if (message.kind === "figures") {
      if (message.run !== this.run) return;
      for (const [id, figures] of message.rows) this.figures.set(id, figures);
      this.show({ computed: this.figures.size });
      return;
    }
    const answer = this.questions.get(message.request);
    this.questions.delete(message.request);
    answer?.(message.kind === "explained" ? message.cell : message.detail);
  }

  private show(change: Partial<KettleSnapshot>): void {
    this.shown = { ...this.shown, ...change };
    for (const listener of this.listeners) listener();
  }
}

/** The identifier stands first in a line and has no escapes; reading the rest is left to the desk. */
function idIn(line: string): string {
  const start = line.indexOf(':"') + 2;
  return line.slice(start, line.indexOf('"', start));
}
