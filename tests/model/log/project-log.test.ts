import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mergeEntries, type LogEntry } from "@/lib/model/log/log-entry";
import type { StepAct } from "@/lib/model/log/log-event";
import { projectLog } from "@/lib/model/log/project-log";
import { stepRecords } from "@/lib/model/log/step-log";
import { anyLog, entry, idOf, measured, START } from "../../support/log/sample-events";

const act = (step: string, what: StepAct["act"], why = ""): StepAct => ({
  kind: "step",
  step,
  act: what,
  why,
  title: "",
  minutes: 0,
  after: null,
});

const correct = (target: number, value: number, seen: readonly number[] = []) =>
  ({ kind: "correct", targetId: idOf(target), seen: seen.map(idOf), measured: measured(value) }) as const;

describe("projectLog", () => {
  it("comes to the same whatever order the events came in, and however often", () => {
    fc.assert(
      fc.property(anyLog, fc.infiniteStream(fc.nat()), (log, random) => {
        const mixed = shuffled([...log, ...log.filter(() => random.next().value % 2 === 0)], random);
        expect(projectLog(mixed)).toEqual(projectLog(log));
      }),
      { numRuns: 1000 },
    );
  });

  it("comes to the same whether two phones merge first or the server does", () => {
    fc.assert(
      fc.property(anyLog, anyLog, anyLog, (one, two, three) => {
        // Three logs of one brew share identifiers; an identifier names one event, so the first of each is taken.
        const all = mergeEntries([...one, ...two, ...three]);
        const [a, b] = [all.filter((_, i) => i % 2 === 0), all.filter((_, i) => i % 3 !== 1)];
        expect(mergeEntries([...mergeEntries(a), ...b])).toEqual(mergeEntries([...b, ...a]));
      }),
      { numRuns: 500 },
    );
  });

  it("keeps an event that waits and takes what the server says of it once it does", () => {
    const waits = entry(1, measured(60), { received: false });
    const known = { ...waits, receivedAt: "2026-05-02T10:00:00.000Z", clockOffsetMs: 12 };
    for (const entries of [
      [waits, known],
      [known, waits],
    ]) {
      expect(projectLog(entries).readings.map(({ receivedAt }) => receivedAt)).toEqual([known.receivedAt]);
    }
  });
});

describe("corrections", () => {
  it("put another value in place, at the time of the reading, and keep the first in sight", () => {
    const [reading] = projectLog([entry(1, measured(60)), entry(2, correct(1, 66))]).readings;
    expect(reading).toMatchObject({ at: START + 60_000, contested: false, isVoid: false });
    expect(reading?.measured.value).toBe(66);
    expect(reading?.history.map((version) => version.measured?.value)).toEqual([60, 66]);
  });

  it("count by what their writer had seen, not by the clock", () => {
    // The second correction saw the first, though its phone's clock says that it was earlier.
    const log = [
      entry(1, measured(60)),
      entry(2, correct(1, 66), { minute: 20 }),
      entry(3, correct(1, 67, [2]), { minute: 5, phone: 2 }),
    ];
    expect(projectLog(log).readings[0]).toMatchObject({ contested: false, measured: { value: 67 } });
  });

  it("are contested where two did not see each other, and settled by one who saw both", () => {
    const two = [entry(1, measured(60)), entry(2, correct(1, 66)), entry(3, correct(1, 67), { phone: 2 })];
    expect(projectLog(two).readings[0]).toMatchObject({ contested: true, measured: { value: 67 } });
    const settled = [...two, entry(4, correct(1, 65, [2, 3]))];
    expect(projectLog(settled).readings[0]).toMatchObject({ contested: false, measured: { value: 65 } });
  });

  it("can say that a reading does not count, and that it does after all", () => {
    const voided = { kind: "void", targetId: idOf(1), seen: [], why: "wrong brew" } as const;
    const log = [entry(1, measured(60)), entry(2, voided)];
    expect(projectLog(log).readings[0]).toMatchObject({ isVoid: true, voidedWhy: "wrong brew" });
    const back = projectLog([...log, entry(3, correct(1, 60, [2]))]).readings[0];
    expect(back).toMatchObject({ isVoid: false, measured: { value: 60 } });
  });
});

describe("steps", () => {
  it("count the first of two who confirm the same one", () => {
    const log = [entry(1, act("boil-1", "begun")), entry(2, act("boil-1", "begun"), { phone: 2 })];
    expect(projectLog(log).steps.get("boil-1")?.begunAt).toBe(START + 60_000);
  });

  it("are open again when they are taken back, and count anew from there", () => {
    const log = [
      entry(1, act("boil-1", "begun")),
      entry(2, act("boil-1", "done")),
      entry(3, act("boil-1", "taken back")),
      entry(4, act("boil-1", "begun")),
    ];
    expect(projectLog(log).steps.get("boil-1")).toMatchObject({ begunAt: START + 240_000, doneAt: null });
  });

  it("become records in minutes from the start; what was left out has none", () => {
    const log = [
      entry(0, act("fill-1", "begun")),
      entry(10, act("fill-1", "done")),
      entry(12, act("rest-1", "left out", "no time")),
      entry(15, act("boil-1", "begun")),
    ];
    const records = stepRecords(projectLog(log).steps, START, START + 30 * 60_000);
    expect(records).toEqual([
      { step: "fill-1", startMin: 0, endMin: 10 },
      { step: "rest-1", startMin: null, endMin: null },
      { step: "boil-1", startMin: 15, endMin: null },
    ]);
  });

  it("follow the server's clock where a phone's is more than a minute off", () => {
    const slow = entry(5, act("boil-1", "begun"), { offsetMs: 600_000 });
    expect(projectLog([slow]).steps.get("boil-1")?.begunAt).toBe(START + 15 * 60_000);
    const nearly = entry(5, act("boil-1", "begun"), { offsetMs: 59_000 });
    expect(projectLog([nearly]).steps.get("boil-1")?.begunAt).toBe(START + 5 * 60_000);
  });
});

describe("timers", () => {
  const timer = (what: "set" | "acknowledged" | "cleared", dueMinute = 0) =>
    ({
      kind: "timer",
      timer: "end-boil-1",
      act: what,
      label: "The boil is over",
      dueAt: what === "set" ? new Date(START + dueMinute * 60_000).toISOString() : null,
      step: "boil-1",
    }) as const;

  it("keep who ended the noise first", () => {
    const log = [
      entry(1, timer("set", 60)),
      entry(61, timer("acknowledged")),
      entry(62, timer("acknowledged"), { phone: 2 }),
    ];
    expect(projectLog(log).timers.get("end-boil-1")?.acknowledged).toEqual({
      at: START + 61 * 60_000,
      byName: "Person 1",
    });
  });

  it("ring again after they are set again", () => {
    const log = [entry(1, timer("set", 60)), entry(61, timer("acknowledged")), entry(63, timer("set", 65))];
    expect(projectLog(log).timers.get("end-boil-1")).toMatchObject({
      dueAt: START + 65 * 60_000,
      acknowledged: null,
    });
  });

  it("are moved with a phone whose clock is wrong", () => {
    const log = [entry(1, timer("set", 60), { offsetMs: -120_000 })];
    expect(projectLog(log).timers.get("end-boil-1")?.dueAt).toBe(START + 58 * 60_000);
  });
});

function shuffled(log: readonly LogEntry[], random: fc.Stream<number>): readonly LogEntry[] {
  return log
    .map((each) => ({ each, key: Number(random.next().value) }))
    .sort((a, b) => a.key - b.key)
    .map(({ each }) => each);
}
