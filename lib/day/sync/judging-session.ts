import type { Stamped } from "@/lib/model/log/log-entry";
import type { JudgeSheet, TastingEntry } from "@/lib/model/tasting/judge-sheet";
import type { TastingContent, TastingEvent } from "@/lib/model/tasting/sheet-event";
import type { DeviceClock } from "../store/clock";
import { keepInQueue } from "../store/keep-in-queue";
import type { Waiting } from "../store/queue";
import { keepJudgeSheet, readTasting } from "../store/read-tasting";
import { retryRefused } from "../store/retry-refused";
import { tastingQueue, type TastingDatabase } from "../store/tasting-database";
import type { Connection } from "./day-session";
import { flush, type Post } from "./flush";
import type { Fetched } from "./http";
import { Observed } from "./observed";

/** What a judge's screen shows. */
export interface JudgingState {
  /** null until this device has read the sheets once. */
  readonly sheet: JudgeSheet | null;
  readonly entries: readonly TastingEntry[];
  /** On this device only. */
  readonly waiting: readonly Waiting<TastingEvent>[];
  readonly connection: Connection;
  /** What the server says of deliveries that it does not take. */
  readonly refusal: string | null;
}

export interface JudgingSetting {
  readonly database: TastingDatabase;
  readonly clock: DeviceClock;
  readonly space: string;
  readonly tastingId: string;
  readonly post: Post;
  readonly fetchSheet: (space: string, tastingId: string) => Promise<Fetched<JudgeSheet>>;
  /** Told of each write, so that another page of this device reads it. */
  readonly announce: () => void;
  /** Runs one after the other what is asked for at the same time, in all pages of this device. */
  readonly alone: <T>(work: () => Promise<T>) => Promise<T | null>;
}

const NOTHING_YET: JudgingState = { sheet: null, entries: [], waiting: [], connection: "unknown", refusal: null };

/** One tasting on one judge's device: reads what is kept, keeps what is written, and sends it on. */
export class JudgingSession extends Observed<JudgingState> {
  constructor(private readonly setting: JudgingSetting) {
    super(NOTHING_YET);
  }

  /** Reads what this device keeps. */
  async reread(): Promise<void> {
    const { database, space, tastingId } = this.setting;
    this.change(await readTasting(database, space, tastingId));
  }

  /** Keeps a sheet or a choice on this device; fulfilled when it is on its disk. Sending follows and is not waited for. */
  async write(flightNo: number, content: TastingContent): Promise<void> {
    const { database, clock, space, tastingId, announce } = this.setting;
    const me = this.snapshot().sheet?.me;
    if (me === undefined) throw new Error("nothing is written before the sheets are read");
    const make = (stamp: Stamped): TastingEvent => ({ ...content, ...stamp, tastingId, flightNo });
    await keepInQueue(tastingQueue(database), clock, { space, userId: me.id, userName: me.name }, [make]);
    await this.reread();
    announce();
    void this.send();
  }

  /** Sends what waits. */
  async send(): Promise<void> {
    const { database, clock, post, alone, announce } = this.setting;
    const userId = this.snapshot().sheet?.me.id;
    if (userId === undefined) return;
    const outcome = await alone(() => flush({ queue: tastingQueue(database), clock, post, userId }));
    if (outcome === null) return;
    const before = this.snapshot().waiting.length;
    await this.reread();
    if (this.snapshot().waiting.length !== before) announce();
    // With nothing to send, nothing was learnt of the server.
    if (outcome.kind === "done" && before === 0) return;
    this.change({ connection: outcome.kind, refusal: outcome.kind === "refused" ? outcome.reason : null });
  }

  /** Sends again what the server has refused. */
  async retry(): Promise<void> {
    const { database, tastingId } = this.setting;
    await retryRefused(tastingQueue(database), (event) => event.tastingId === tastingId);
    await this.reread();
    await this.send();
  }

  /** Reads the sheets anew from the server, where it can be reached. */
  async refresh(): Promise<void> {
    const { database, space, tastingId, fetchSheet } = this.setting;
    const fetched = await fetchSheet(space, tastingId);
    if (fetched.kind !== "sheet") {
      this.change({ connection: fetched.kind });
      return;
    }
    await keepJudgeSheet(database, fetched.sheet);
    await this.reread();
    this.change({ connection: "done" });
  }
}
