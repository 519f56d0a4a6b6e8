import { projectLog, type BrewLog } from "@/lib/model/log/project-log";
import type { EventContent } from "@/lib/model/log/log-event";
import type { LogEntry } from "@/lib/model/log/log-entry";
import type { DaySheet } from "@/lib/model/day-sheet";
import type { DeviceClock } from "../store/clock";
import { dayQueue, type DayDatabase } from "../store/database";
import { keepEvents } from "../store/keep-event";
import type { Waiting } from "../store/queue";
import { retryRefused } from "../store/retry-refused";
import { keepEntries, keepSheet, readDay } from "../store/read-day";
import { flush, type FlushOutcome, type Post } from "./flush";
import type { FetchedSheet } from "./http";
import { Observed } from "./observed";

/** How the server is, as far as the last attempt tells. */
export type Connection = FlushOutcome["kind"] | "unknown" | "not found";

/** What the screen shows. It is made anew with each change and never changed. */
export interface DayState {
  /** null until this device has read the sheet once. */
  readonly sheet: DaySheet | null;
  readonly entries: readonly LogEntry[];
  readonly log: BrewLog;
  /** On this device only. */
  readonly waiting: readonly Waiting[];
  readonly connection: Connection;
  /** What the server says of deliveries that it does not take. */
  readonly refusal: string | null;
  /** How far the server's clock is ahead of this device's, ms; null until it has been compared. */
  readonly clockAheadMs: number | null;
  /** Whether what is kept has been read from the disk yet. */
  readonly isReady: boolean;
}

export interface SessionSetting {
  readonly database: DayDatabase;
  readonly clock: DeviceClock;
  readonly space: string;
  readonly brewId: string;
  readonly post: Post;
  readonly fetchSheet: (space: string, brewId: string) => Promise<FetchedSheet>;
  /** Sends the pictures of a person, after everything else. */
  readonly sendPhotos: (userId: string) => Promise<void>;
  /** Told of each write, so that another page of this device reads it. */
  readonly announce: () => void;
  /** Runs one after the other what is asked for at the same time, in all pages of this device. */
  readonly alone: <T>(work: () => Promise<T>) => Promise<T | null>;
}

const NOTHING = projectLog([]);

const NOTHING_YET: DayState = {
  sheet: null,
  entries: [],
  log: NOTHING,
  waiting: [],
  connection: "unknown",
  refusal: null,
  clockAheadMs: null,
  isReady: false,
};

/** One brew on one device: reads what is kept, keeps what is written, and sends it on. */
export class DaySession extends Observed<DayState> {
  constructor(private readonly setting: SessionSetting) {
    super(NOTHING_YET);
  }

  /** Reads what this device keeps, and shows it with what else was learnt at once. */
  async reread(learnt: Pick<Partial<DayState>, "connection" | "clockAheadMs"> = {}): Promise<void> {
    const { database, space, brewId } = this.setting;
    const { sheet: read, entries, waiting } = await readDay(database, space, brewId);
    const shown = this.snapshot();
    // What is the same stays the same object: the plan and the whole day are computed from it and drawn.
    const sheet = read !== null && read.readAt === shown.sheet?.readAt ? shown.sheet : read;
    const log = isSameLog(entries, shown.entries) ? {} : { entries, log: projectLog(entries) };
    const queue = isSameQueue(waiting, shown.waiting) ? {} : { waiting };
    this.change({ sheet, ...log, ...queue, isReady: true, ...learnt });
  }

  /** Keeps events on this device; fulfilled when they are on its disk. Showing and sending follow and are not waited for. */
  async keep(contents: readonly EventContent[], occurredAt?: number): Promise<void> {
    await this.store(contents, occurredAt);
    void this.show();
  }

  /** The same, fulfilled when the screen has them too: what is done next depends on it. */
  async write(contents: readonly EventContent[], occurredAt?: number): Promise<void> {
    await this.store(contents, occurredAt);
    await this.show();
  }

  private async store(contents: readonly EventContent[], occurredAt?: number): Promise<void> {
    const { database, clock, space, brewId } = this.setting;
    const me = this.snapshot().sheet?.me;
    if (me === undefined) throw new Error("nothing is written before the sheet is read");
    const writer = { space, brewId, userId: me.id, userName: me.name };
    await keepEvents(database, clock, writer, contents, occurredAt);
  }

  private async show(): Promise<void> {
    await this.reread();
    this.setting.announce();
    void this.send();
  }

  /** Sends what waits. */
  async send(): Promise<void> {
    const { database, clock, post, alone, announce } = this.setting;
    const userId = this.snapshot().sheet?.me.id;
    if (userId === undefined) return;
    const outcome = await alone(() => flush({ queue: dayQueue(database), clock, post, userId }));
    if (outcome === null) return;
    if (outcome.kind === "done") await this.setting.sendPhotos(userId);
    const before = this.snapshot().waiting.length;
    await this.reread();
    if (this.snapshot().waiting.length !== before) announce();
    // With nothing to send, nothing was learnt of the server.
    if (outcome.kind === "done" && before === 0) return;
    this.change({ connection: outcome.kind, refusal: outcome.kind === "refused" ? outcome.reason : null });
  }

  /** Sends again what the server has refused. */
  async retry(): Promise<void> {
    const { database, brewId } = this.setting;
    await retryRefused(dayQueue(database), (event) => event.brewId === brewId);
    await this.reread();
    await this.send();
  }

  /** Reads the sheet anew from the server, where it can be reached. */
  async refresh(): Promise<void> {
    const { database, clock, space, brewId, fetchSheet } = this.setting;
    const before = clock.now();
    const fetched = await fetchSheet(space, brewId);
    if (fetched.kind !== "sheet") {
      this.change({ connection: fetched.kind });
      return;
    }
    const { sheet } = fetched;
    const clockAheadMs = Date.parse(sheet.readAt) - (before + clock.now()) / 2;
    await keepSheet(database, sheet);
    await this.reread({ connection: "done", clockAheadMs });
  }

  /** Adds what others have logged. */
  async take(entries: readonly LogEntry[]): Promise<void> {
    await keepEntries(this.setting.database, this.setting.brewId, entries);
    await this.reread({ connection: "done" });
  }
}

/** An entry never changes but for what the server says when it has it. */
function isSameLog(some: readonly LogEntry[], others: readonly LogEntry[]): boolean {
  return isSameList(some, others, ({ event, receivedAt }) => `${event.id} ${String(receivedAt)}`);
}

function isSameQueue(some: readonly Waiting[], others: readonly Waiting[]): boolean {
  return isSameList(some, others, ({ event, refusal }) => `${event.id} ${String(refusal)}`);
}

function isSameList<T>(some: readonly T[], others: readonly T[], keyOf: (one: T) => string): boolean {
  return some.length === others.length && some.every((one, i) => keyOf(one) === keyOf(others[i] as T));
}
