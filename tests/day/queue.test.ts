import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import type { DeliveryAnswer } from "@/lib/model/log/delivery-answer";
import type { LogEvent } from "@/lib/model/log/log-event";
import type { Delivery } from "@/lib/model/log/delivery";
import { projectLog } from "@/lib/model/log/project-log";
import type { DeviceClock } from "@/lib/day/store/clock";
import { dayQueue, openDayDatabase } from "@/lib/day/store/database";
import { keepEvents } from "@/lib/day/store/keep-event";
import { readDay } from "@/lib/day/store/read-day";
import { retryRefused } from "@/lib/day/store/retry-refused";
import { flush } from "@/lib/day/sync/flush";
import { measured } from "../support/log/sample-events";

const SPACE = "club";
const BREW = "00000000-0000-7000-8000-000000000900";

function clock(): DeviceClock {
  return { now: () => Date.now(), steady: () => performance.now(), page: "page" };
}

describe("the queue of a phone", () => {
  it("numbers its events without a gap and without a number twice, from two pages at once", async () => {
    const one = await openDayDatabase("two-pages");
    const other = await openDayDatabase("two-pages");
    const writer = { space: SPACE, brewId: BREW, userId: "one", userName: "One" };
    await Promise.all(
      Array.from({ length: 20 }, (_, i) => keepEvents(i % 2 === 0 ? one : other, clock(), writer, [measured(i)])),
    );
    const waiting = await one.getAll("waiting");
    const numbers = waiting.map(({ event }) => event.deviceSeq).sort((a, b) => (a ?? 0) - (b ?? 0));
    expect(numbers).toEqual(Array.from({ length: 20 }, (_, i) => i + 1));
    expect(new Set(waiting.map(({ event }) => event.deviceId)).size).toBe(1);
  });

  it("gives what is written together an order in time, which everybody reads who reads the log", async () => {
    const database = await openDayDatabase("in-order");
    const writer = { space: SPACE, brewId: BREW, userId: "one", userName: "One" };
    const at = Date.parse("2026-05-02T10:00:00.000Z");
    const events = await keepEvents(database, clock(), writer, [measured(1), measured(2), measured(3)], at);
    expect(events.map(({ occurredAt }) => Date.parse(occurredAt) - at)).toEqual([0, 1, 2]);
  });

  it("keeps all of what is written together, or nothing of it", async () => {
    const database = await openDayDatabase("together");
    const writer = { space: SPACE, brewId: BREW, userId: "one", userName: "One" };
    const unkeepable = { ...measured(1), note: (() => "") as unknown as string };
    await expect(keepEvents(database, clock(), writer, [measured(20), unkeepable])).rejects.toThrow();
    expect(await database.getAllKeys("waiting")).toEqual([]);
    const { entries } = await readDay(database, SPACE, BREW);
    expect(projectLog(entries).readings).toEqual([]);
  });

  it("holds back what another person wrote on the same device", async () => {
    const database = await openDayDatabase("shared");
    await keepEvents(database, clock(), { space: SPACE, brewId: BREW, userId: "one", userName: "One" }, [measured(1)]);
    const sent: Delivery[] = [];
    const post = (delivery: Delivery) => {
      sent.push(delivery);
      return Promise.reject(new TypeError("no network"));
    };
    expect(await flush({ queue: dayQueue(database), clock: clock(), userId: "two", post })).toEqual({ kind: "done" });
    expect(sent).toEqual([]);
  });

  it("says that it is signed out and keeps everything", async () => {
    const database = await openDayDatabase("signed-out");
    await keepEvents(database, clock(), { space: SPACE, brewId: BREW, userId: "one", userName: "One" }, [measured(1)]);
    const post = () => Promise.resolve({ status: 401, body: { message: "You are not signed in." } });
    expect(await flush({ queue: dayQueue(database), clock: clock(), userId: "one", post })).toEqual({
      kind: "signed out",
    });
    expect(await database.getAllKeys("waiting")).toHaveLength(1);
  });

  it("shows what the server refuses, with the reason, and sends the rest", async () => {
    const database = await openDayDatabase("refused");
    const writer = { space: SPACE, brewId: BREW, userId: "one", userName: "One" };
    const [bad] = await keepEvents(database, clock(), writer, [measured(1)]);
    const [good] = await keepEvents(database, clock(), writer, [measured(2)]);
    const answer: DeliveryAnswer = {
      stored: [good?.id ?? ""],
      duplicate: [],
      rejected: [{ id: bad?.id ?? "", reason: "There is no such brew here.", isSequenceTaken: false }],
      receivedAt: new Date().toISOString(),
    };
    const post = () => Promise.resolve({ status: 200, body: answer });
    await flush({ queue: dayQueue(database), clock: clock(), userId: "one", post });
    const { waiting, entries } = await readDay(database, SPACE, BREW);
    expect(waiting.map(({ refusal }) => refusal)).toEqual(["There is no such brew here."]);
    expect(entries).toHaveLength(2);

    // Refused, it is not sent by itself; asked for, it is.
    const sent: Delivery[] = [];
    const keeping = (delivery: Delivery) => {
      sent.push(delivery);
      return Promise.reject(new TypeError("no network"));
    };
    await flush({ queue: dayQueue(database), clock: clock(), userId: "one", post: keeping });
    expect(sent).toEqual([]);
    await retryRefused(dayQueue(database), ({ brewId }) => brewId === BREW);
    await flush({ queue: dayQueue(database), clock: clock(), userId: "one", post: keeping });
    expect(sent.flatMap(({ events }) => events)).toEqual([bad]);
  });

  it("gives an event another number where its own is taken, and sends it again", async () => {
    const database = await openDayDatabase("restored");
    const writer = { space: SPACE, brewId: BREW, userId: "one", userName: "One" };
    const [event] = await keepEvents(database, clock(), writer, [measured(1)]);
    const numbers: (number | null)[] = [];
    const post = (delivery: Delivery) => {
      const [sent] = delivery.events as LogEvent[];
      numbers.push(sent?.deviceSeq ?? null);
      const id = event?.id ?? "";
      const isFirst = numbers.length === 1;
      const rejected = isFirst ? [{ id, reason: "taken", isSequenceTaken: true }] : [];
      return Promise.resolve({
        status: 200,
        body: { stored: isFirst ? [] : [id], duplicate: [], rejected, receivedAt: new Date().toISOString() },
      });
    };
    expect(await flush({ queue: dayQueue(database), clock: clock(), userId: "one", post })).toEqual({ kind: "done" });
    expect(numbers).toEqual([1, 2]);
    expect(await database.getAllKeys("waiting")).toEqual([]);
  });

  it("says of which events the clock was set anew since they were made", async () => {
    const database = await openDayDatabase("clock-set");
    const writer = { space: SPACE, brewId: BREW, userId: "one", userName: "One" };
    const wall = { ahead: 0 };
    const moving: DeviceClock = {
      now: () => 1_800_000_000_000 + wall.ahead,
      steady: () => 5000,
      page: "page",
    };
    const [before] = await keepEvents(database, moving, writer, [measured(1)]);
    wall.ahead = 3_600_000;
    await keepEvents(database, moving, writer, [measured(2)]);
    const sent: Delivery[] = [];
    const post = (delivery: Delivery) => {
      sent.push(delivery);
      return Promise.reject(new TypeError("no network"));
    };
    await flush({ queue: dayQueue(database), clock: moving, userId: "one", post });
    expect(sent[0]?.unsteady).toEqual([before?.id]);
  });
});
