import "fake-indexeddb/auto";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DeliveryAnswer } from "@/lib/model/log/delivery-answer";
import type { LogEvent } from "@/lib/model/log/log-event";
import type { Delivery } from "@/lib/model/log/delivery";
import type { DeviceClock } from "@/lib/day/store/clock";
import { dayQueue, openDayDatabase, type DayDatabase } from "@/lib/day/store/database";
import { keepEvents } from "@/lib/day/store/keep-event";
import { readDay } from "@/lib/day/store/read-day";
import { flush } from "@/lib/day/sync/flush";
import { measured } from "../support/log/sample-events";

const SPACE = "club";
const BREW = "00000000-0000-7000-8000-000000000900";

/** The server as the design states it: a set of events by identifier, and of counts by device. */
class ModelServer {
  readonly events = new Map<string, LogEvent>();
  private readonly counts = new Set<string>();

  take(delivery: Delivery): DeliveryAnswer {
    const stored: string[] = [];
    const duplicate: string[] = [];
    for (const event of delivery.events as LogEvent[]) {
      if (this.events.has(event.id)) duplicate.push(event.id);
      else {
        this.events.set(event.id, event);
        this.counts.add(`${event.deviceId} ${String(event.deviceSeq)}`);
        stored.push(event.id);
      }
    }
    return { stored, duplicate, rejected: [], receivedAt: new Date(2_000_000_000_000).toISOString() };
  }
}

/** What becomes of one delivery. */
type Fate = "arrives" | "lost on the way" | "answer lost" | "arrives twice" | "arrives later" | "server is down";

interface Model {
  /** Every event that a phone called kept. */
  readonly kept: Set<string>;
}

interface Real {
  readonly server: ModelServer;
  readonly phones: Phone[];
  readonly late: Delivery[];
}

let names = 0;

class Phone {
  private constructor(
    private readonly name: string,
    private database: DayDatabase,
    private readonly user: string,
  ) {}

  static async open(user: string): Promise<Phone> {
    names += 1;
    const name = `phone-${String(names)}`;
    return new Phone(name, await openDayDatabase(name), user);
  }

  /** The page is loaded anew: whatever was not on the disk is gone. */
  async reload(): Promise<void> {
    this.database.close();
    this.database = await openDayDatabase(this.name);
  }

  async write(count: number): Promise<readonly string[]> {
    const contents = Array.from({ length: count }, (_, i) => measured(20 + i));
    const writer = { space: SPACE, brewId: BREW, userId: this.user, userName: this.user };
    return (await keepEvents(this.database, clock(), writer, contents)).map(({ id }) => id);
  }

  async send({ server, late }: Real, fate: Fate): Promise<void> {
    await flush({
      queue: dayQueue(this.database),
      clock: clock(),
      userId: this.user,
      post: posting(server, late, fate),
    });
  }

  async waiting(): Promise<readonly string[]> {
    return this.database.getAllKeys("waiting");
  }

  async seen(): Promise<readonly { readonly id: string; readonly isSafe: boolean }[]> {
    const { entries } = await readDay(this.database, SPACE, BREW);
    return entries.map(({ event, receivedAt }) => ({ id: event.id, isSafe: receivedAt !== null }));
  }
}

function posting(server: ModelServer, late: Delivery[], fate: Fate) {
  return (delivery: Delivery): Promise<{ readonly status: number; readonly body: unknown }> => {
    if (fate === "lost on the way") return Promise.reject(new TypeError("no network"));
    if (fate === "server is down") return Promise.resolve({ status: 503, body: null });
    if (fate === "arrives later") {
      late.push(delivery);
      return Promise.reject(new TypeError("no answer"));
    }
    const first = server.take(delivery);
    if (fate === "answer lost") return Promise.reject(new TypeError("no answer"));
    return Promise.resolve({ status: 200, body: fate === "arrives twice" ? server.take(delivery) : first });
  };
}

function clock(): DeviceClock {
  return { now: () => Date.now(), steady: () => performance.now(), page: "page" };
}

async function holds({ kept }: Model, { server, phones }: Real): Promise<void> {
  const onPhones = new Set<string>();
  for (const phone of phones) {
    for (const id of await phone.waiting()) onPhones.add(id);
    for (const { id, isSafe } of await phone.seen()) {
      // What a phone shows as safe is on the server; what it shows as its own still waits there.
      if (isSafe) expect(server.events.has(id)).toBe(true);
      else expect(onPhones.has(id)).toBe(true);
    }
  }
  for (const id of kept) expect(server.events.has(id) || onPhones.has(id)).toBe(true);
}

class Write implements fc.AsyncCommand<Model, Real> {
  constructor(
    private readonly phone: number,
    private readonly count: number,
  ) {}
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    const ids = (await real.phones[this.phone]?.write(this.count)) ?? [];
    for (const id of ids) model.kept.add(id);
    await holds(model, real);
  }
  toString = (): string => `phone ${String(this.phone)} writes ${String(this.count)}`;
}

class Send implements fc.AsyncCommand<Model, Real> {
  constructor(
    private readonly phone: number,
    private readonly fate: Fate,
  ) {}
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    await real.phones[this.phone]?.send(real, this.fate);
    await holds(model, real);
  }
  toString = (): string => `phone ${String(this.phone)} sends: ${this.fate}`;
}

class Reload implements fc.AsyncCommand<Model, Real> {
  constructor(private readonly phone: number) {}
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    await real.phones[this.phone]?.reload();
    await holds(model, real);
  }
  toString = (): string => `phone ${String(this.phone)} is loaded anew`;
}

class ArriveLate implements fc.AsyncCommand<Model, Real> {
  constructor(private readonly which: number) {}
  check = (): boolean => true;
  async run(model: Model, real: Real): Promise<void> {
    const [delivery] = real.late.splice(this.which % Math.max(1, real.late.length), 1);
    if (delivery !== undefined) real.server.take(delivery);
    await holds(model, real);
  }
  toString = (): string => `an old delivery arrives`;
}

const FATES: readonly Fate[] = [
  "arrives",
  "lost on the way",
  "answer lost",
  "arrives twice",
  "arrives later",
  "server is down",
];
const phone = fc.nat(1);
const commands = fc.commands(
  [
    fc.tuple(phone, fc.integer({ min: 1, max: 3 })).map(([who, count]) => new Write(who, count)),
    fc.tuple(phone, fc.constantFrom(...FATES)).map(([who, fate]) => new Send(who, fate)),
    phone.map((who) => new Reload(who)),
    fc.nat(9).map((which) => new ArriveLate(which)),
  ],
  { maxCommands: 30 },
);

describe("a phone", () => {
  it("loses nothing and doubles nothing, whatever becomes of its deliveries", async () => {
    await fc.assert(
      fc.asyncProperty(commands, async (steps) => {
        const phones = [await Phone.open("one"), await Phone.open("two")];
        const real: Real = { server: new ModelServer(), phones, late: [] };
        const model: Model = { kept: new Set() };
        await fc.asyncModelRun(() => ({ model, real }), steps);
        // In the end the network is back: everything arrives, once, and both phones are empty.
        for (const each of phones) await each.send(real, "arrives");
        expect(new Set(real.server.events.keys())).toEqual(model.kept);
        for (const each of phones) expect(await each.waiting()).toEqual([]);
      }),
      { numRuns: 100 },
    );
  }, 120_000);
});
