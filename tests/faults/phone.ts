import type { EventContent } from "@/lib/model/log/log-event";
import type { Delivery } from "@/lib/model/log/delivery";
import { dayQueue, openDayDatabase, type DayDatabase } from "@/lib/day/store/database";
import type { DeviceClock } from "@/lib/day/store/clock";
import { keepEvents } from "@/lib/day/store/keep-event";
import { readDay } from "@/lib/day/store/read-day";
import { flush } from "@/lib/day/sync/flush";

/** Whose phone it is, at which brew, and the way to the server. */
export interface PhoneSetting {
  readonly name: string;
  readonly space: string;
  readonly brewId: string;
  readonly userId: string;
  readonly cookie: string;
  readonly origin: string;
  readonly proxyPort: number;
  readonly random: () => number;
}

/** What happened on all phones. */
export interface Tally {
  /** What each event that a phone called kept says, by its identifier. */
  readonly created: Map<string, number>;
  /** What a phone has shown as safe on the server. */
  readonly safe: Set<string>;
  deliveries: number;
  repeats: number;
  duplicates: number;
  reloads: number;
  lastSafeAt: number;
}

const TOO_LONG_MS = 8000;
const TWICE_SHARE = 0.08;
const LATER_SHARE = 0.08;

/** A phone as it is in a garage: it runs the program's own store and queue, on a bad network, and is loaded anew now and then. */
export class Phone {
  private readonly old: Delivery[] = [];
  private isCalm = false;

  private constructor(
    private readonly setting: PhoneSetting,
    private readonly tally: Tally,
    private database: DayDatabase,
  ) {}

  static async open(setting: PhoneSetting, tally: Tally): Promise<Phone> {
    return new Phone(setting, tally, await openDayDatabase(setting.name));
  }

  /** Enters some readings. Only what the store calls kept counts as created. */
  async write(values: readonly number[]): Promise<void> {
    const { space, brewId, userId, name } = this.setting;
    const contents = values.map((value): EventContent => ({
      kind: "temperature",
      quantity: "kettle.temperature",
      value,
      sd: 0.5,
      instrument: "thermometer",
      sampleC: null,
      note: "",
      entered: `${String(value)} °C`,
      step: null,
    }));
    const writer = { space, brewId, userId, userName: name };
    const events = await keepEvents(this.database, clock, writer, contents);
    events.forEach(({ id }, i) => this.tally.created.set(id, values[i] ?? 0));
  }

  /** Loads the page anew: what was under way is cut off, and only the disk is left. */
  async reload(): Promise<void> {
    this.tally.reloads += 1;
    const left = this.database;
    this.database = await openDayDatabase(this.setting.name);
    left.close();
  }

  async send(): Promise<void> {
    const { userId, random } = this.setting;
    const { database } = this;
    try {
      await flush({ queue: dayQueue(database), clock, userId, post: (delivery) => this.post(delivery) });
      if (!this.isCalm && this.old.length > 0 && random() < 0.3) await this.sendOld();
    } catch (error) {
      // The page was loaded anew under it.
      if (!(error instanceof DOMException)) throw error;
    }
    await this.noteSafe();
  }

  /** From now on the network is good. */
  calm(): void {
    this.isCalm = true;
  }

  waiting(): Promise<readonly string[]> {
    return this.database.getAllKeys("waiting");
  }

  /** Everything that this phone would show as safe. */
  private async noteSafe(): Promise<void> {
    const { space, brewId } = this.setting;
    const { entries } = await readDay(this.database, space, brewId);
    for (const { event, receivedAt } of entries) {
      if (receivedAt === null || this.tally.safe.has(event.id)) continue;
      this.tally.safe.add(event.id);
      this.tally.lastSafeAt = Date.now();
    }
  }

  private async post(delivery: Delivery): Promise<{ readonly status: number; readonly body: unknown }> {
    const { random } = this.setting;
    if (!this.isCalm && random() < LATER_SHARE) this.old.push(delivery);
    if (!this.isCalm && random() < TWICE_SHARE) {
      this.tally.repeats += 1;
      const [first] = await Promise.allSettled([this.request(delivery), this.request(delivery)]);
      if (first.status === "rejected") throw first.reason;
      return first.value;
    }
    return this.request(delivery);
  }

  /** An earlier delivery arrives once more, long after those behind it. */
  private async sendOld(): Promise<void> {
    const [delivery] = this.old.splice(Math.floor(this.setting.random() * this.old.length), 1);
    if (delivery === undefined) return;
    this.tally.repeats += 1;
    await this.request(delivery).catch(() => undefined);
  }

  private async request(delivery: Delivery): Promise<{ readonly status: number; readonly body: unknown }> {
    const { proxyPort, origin, cookie } = this.setting;
    this.tally.deliveries += 1;
    const response = await fetch(`http://127.0.0.1:${String(proxyPort)}/api/log/ingest`, {
      method: "POST",
      headers: { "content-type": "application/json", origin, cookie, connection: "close" },
      body: JSON.stringify(delivery),
      signal: AbortSignal.timeout(TOO_LONG_MS),
    });
    const body: unknown = await response.json();
    this.tally.duplicates += duplicatesIn(body);
    return { status: response.status, body };
  }
}

const clock: DeviceClock = { now: () => Date.now(), steady: () => performance.now(), page: "page" };

function duplicatesIn(body: unknown): number {
  const isAnswer = typeof body === "object" && body !== null && "duplicate" in body && Array.isArray(body.duplicate);
  return isAnswer ? (body.duplicate as readonly unknown[]).length : 0;
}
