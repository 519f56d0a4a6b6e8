import { describe, expect, it } from "vitest";
import { NO_CHOICE } from "@/lib/model/adaptation";
import type { KettlesHead, KettleToAdapt } from "@/lib/model/kettle-entry";
import type { FromDesk, ToDesk } from "@/lib/ui/kettles/desk-messages";
import type { KettleFigures } from "@/lib/ui/kettles/kettle-figures";
import { KettleStore, type Desks } from "@/lib/ui/kettles/kettle-store";
import { entryOf, roomyKettle, tableContent } from "../../support/kettle-table";

const IDS = Array.from({ length: 50 }, (_, i) => `kettle-${String(i)}`);
const FIGURES = { fit: "fits", way: null, isWayLost: false, reasons: [], intervals: {} } as const;
const figures = { ...FIGURES, values: {} } as unknown as KettleFigures;

function wire(ids: readonly string[]): ReadableStream<Uint8Array> {
  const head: KettlesHead = { content: tableContent, entries: [...ids.map((id) => entryOf(id)), NOBODY] };
  const lines = ids.map((id): KettleToAdapt => ({ id, equipment: roomyKettle, lots: [] }));
  const text = [head, ...lines].map((line) => `${JSON.stringify(line)}\n`).join("");
  return new Response(text).body ?? new ReadableStream();
}

const NOBODY = entryOf("nobody", { kettleName: null });

/** A store with two desks that note what they are told and say what the test makes them say. */
function openStore(rows: () => Promise<ReadableStream<Uint8Array>> = () => Promise.resolve(wire(IDS))) {
  const told: [ToDesk[], ToDesk[]] = [[], []];
  let say: (message: FromDesk) => void = () => undefined;
  let isClosed = false;
  const openDesks = (receive: (message: FromDesk) => void): Desks => {
    say = receive;
    isClosed = false;
    return {
      count: 2,
      send: (desk, message) => told[desk]?.push(message),
      close: () => {
        isClosed = true;
      },
    };
  };
  const first = { entries: [entryOf("kettle-0")], rowCount: 51, kettleCount: 50, figures: [["kettle-0", figures]] };
  const store = new KettleStore(
    { fetchRows: rows, openDesks },
    { ...first, figures: [["kettle-0", figures] as const] },
    "chosen",
  );
  const kettlesAt = (desk: 0 | 1): string[] =>
    told[desk].flatMap((message) =>
      message.kind === "kettles" ? message.lines.map((line) => (JSON.parse(line) as KettleToAdapt).id) : [],
    );
  return { store, told, kettlesAt, say: (message: FromDesk) => say(message), isClosed: () => isClosed };
}

describe("the rows of an opened table", () => {
  it("are shared out among the desks, each to one of them, after the recipe and what was done already", async () => {
    const { store, told, kettlesAt } = openStore();
    await store.start();
    expect([...kettlesAt(0), ...kettlesAt(1)].toSorted()).toEqual([...IDS].toSorted());
    expect(kettlesAt(0).length).toBeGreaterThan(0);
    expect(kettlesAt(1).length).toBeGreaterThan(0);
    for (const desk of told) expect(desk[0]).toMatchObject({ kind: "open", run: 0, done: ["kettle-0"] });
    expect(store.snapshot()).toMatchObject({ rowCount: 51, kettleCount: 50, computed: 1, state: "read" });
  });

  it("count up as they are computed, and forget what belongs to an older volume", async () => {
    const { store, say } = openStore();
    await store.start();
    say({ kind: "figures", run: 0, rows: [["kettle-1", figures]] });
    expect(store.snapshot().computed).toBe(2);
    store.setVolume("written");
    expect(store.snapshot().computed).toBe(0);
    say({ kind: "figures", run: 0, rows: [["kettle-2", figures]] });
    expect(store.snapshot().computed).toBe(0);
    say({ kind: "figures", run: 1, rows: [["kettle-2", figures]] });
    expect(store.snapshot().computed).toBe(1);
  });

  it("are asked about at the desk that has the kettle, and nowhere about one that is not there", async () => {
    const { store, told, kettlesAt, say } = openStore();
    await store.start();
    const id = kettlesAt(1)[0] ?? "";
    const answer = store.detail(id);
    await Promise.resolve();
    const question = told[1].at(-1);
    expect(question).toMatchObject({ kind: "detail", id });
    expect(told[0].some(({ kind }) => kind === "detail")).toBe(false);
    const detail = { limits: [], fits: true, ways: [] };
    say({ kind: "detail", request: question?.kind === "detail" ? question.request : 0, detail });
    expect(await answer).toEqual(detail);
    expect(await store.explain("elsewhere", "day.energy")).toBeNull();
  });

  it("show a choice at once and have its row computed anew", async () => {
    const { store, told, kettlesAt } = openStore();
    await store.start();
    const id = kettlesAt(0)[0] ?? "";
    const kept = { lockVersion: 1, choice: { ...NO_CHOICE, way: "less volume" }, changedByName: "Ada" };
    store.keep(id, kept);
    expect(store.snapshot().entries.find(({ key }) => key === id)?.kept).toEqual(kept);
    expect(told[0].at(-1)).toEqual({ kind: "keep", id, choice: kept.choice });
  });

  it("take over what somebody else chose meanwhile, before anything was computed here, and nothing older", async () => {
    const { store, kettlesAt, told } = openStore();
    const id = IDS[0] ?? "";
    const kept = { lockVersion: 2, choice: { ...NO_CHOICE, way: "less volume" }, changedByName: "Ada" };
    await store.keepLater(id, kept);
    expect(store.snapshot().entries.find(({ key }) => key === id)?.kept).toEqual(kept);
    const desk = kettlesAt(0).includes(id) ? 0 : 1;
    expect(told[desk].at(-1)).toEqual({ kind: "keep", id, choice: kept.choice });
    await store.keepLater(id, { ...kept, lockVersion: 1, changedByName: "Bo" });
    expect(store.snapshot().entries.find(({ key }) => key === id)?.kept).toEqual(kept);
  });

  it("say when they could not be read, and are read again when somebody asks", async () => {
    let attempts = 0;
    const { store, isClosed } = openStore(() => {
      attempts++;
      return attempts === 1 ? Promise.reject(new Error("no network")) : Promise.resolve(wire(IDS));
    });
    await store.start();
    expect(store.snapshot()).toMatchObject({ state: "failed", computed: 1 });
    expect(isClosed()).toBe(true);
    await store.start();
    expect(store.snapshot().state).toBe("read");
  });

  it("stop when the table is left", async () => {
    const { store, isClosed } = openStore();
    await store.start();
    store.close();
    expect(isClosed()).toBe(true);
  });
});
