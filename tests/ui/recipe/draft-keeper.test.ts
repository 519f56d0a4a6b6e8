import { randomUUID } from "node:crypto";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import type { DraftChange, DraftOutcome, KeptDraft } from "@/lib/model/recipe-draft";
import { DraftKeeper } from "@/lib/ui/recipe/draft-keeper";
import type { LocalDraft, LocalDrafts } from "@/lib/ui/recipe/local-drafts";

const ID = randomUUID();
const WRITER = randomUUID();
const NO_ROWS = { steps: [], mashGrist: [], kettleGrist: [], boilHops: [], standHops: [], dryHops: [] };
const kept = (writer: string = WRITER): KeptDraft => ({
  fields: {},
  rows: NO_ROWS,
  kettle: "",
  note: "",
  writer,
  preferences: DEFAULT_PREFERENCES,
});
const newer = (writer: KeptDraft["writer"]) => ({
  id: ID,
  baseRev: null,
  lockVersion: 4,
  begunAt: new Date(),
  savedAt: new Date(),
  kept: kept(writer),
});

type Answer = () => Promise<{ readonly status: "ok"; readonly data: DraftOutcome }>;
const ok =
  (lockVersion: number): Answer =>
  () =>
    Promise.resolve({ status: "ok", data: { ok: true, lockVersion, savedAt: new Date() } });
const lost: Answer = () => Promise.reject(new TypeError("Failed to fetch"));
const stale =
  (writer: KeptDraft["writer"]): Answer =>
  () =>
    Promise.resolve({ status: "ok", data: { ok: false, reason: "stale", newer: newer(writer) } });

/** A keeper whose server answers in this order, and the last answer from then on. */
function keeperWith(...answers: readonly Answer[]) {
  const sent: DraftChange[] = [];
  const here = new Map<string, LocalDraft>();
  const local: LocalDrafts = {
    read: (id) => here.get(id) ?? null,
    write: (draft) => here.set(draft.change.id, draft),
    clear: (id) => here.delete(id),
    newOnes: () => [...here.values()],
  };
  const keeper = new DraftKeeper({
    id: ID,
    baseRev: null,
    initial: null,
    content: () => ({ title: "Ale", kept: kept() }),
    local,
    remember: () => undefined,
    send: (change) => {
      const answer = answers[Math.min(sent.length, answers.length - 1)];
      sent.push(change);
      return answer === undefined ? lost() : answer();
    },
  });
  return { keeper, sent, here };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe("DraftKeeper", () => {
  it("keeps it here at once, on the server within two seconds, and then no longer here", async () => {
    const { keeper, sent, here } = keeperWith(ok(1));
    keeper.changed();
    await vi.advanceTimersByTimeAsync(50);
    expect(here.has(ID)).toBe(true);
    expect(keeper.state().kind).toBe("saving");
    await vi.advanceTimersByTimeAsync(2000);
    expect(sent.map(({ lockVersion }) => lockVersion)).toEqual([0]);
    expect(keeper.state().kind).toBe("saved");
    expect(here.has(ID)).toBe(false);
  });

  it("does not wait for somebody who never pauses", async () => {
    const { keeper, sent } = keeperWith(ok(1));
    for (let ms = 0; ms < 2200; ms += 200) {
      keeper.changed();
      await vi.advanceTimersByTimeAsync(200);
    }
    expect(sent.length).toBeGreaterThan(0);
  });

  it("says that it is not saved while the server does not answer, and tries until it is", async () => {
    const { keeper, sent, here } = keeperWith(lost, lost, ok(1));
    keeper.changed();
    await vi.advanceTimersByTimeAsync(1000);
    expect(keeper.state().kind).toBe("retrying");
    expect(here.has(ID)).toBe(true);
    await vi.advanceTimersByTimeAsync(10_000);
    expect(sent).toHaveLength(3);
    expect(keeper.state().kind).toBe("saved");
  });

  it("tells what another page kept, and sends nothing more until one of the two is chosen", async () => {
    const { keeper, sent } = keeperWith(stale(randomUUID()), ok(5));
    keeper.changed();
    await vi.advanceTimersByTimeAsync(1000);
    expect(keeper.state().kind).toBe("stale");
    keeper.changed();
    await vi.advanceTimersByTimeAsync(60_000);
    expect(sent).toHaveLength(1);
    keeper.takeOver(4);
    await vi.advanceTimersByTimeAsync(1000);
    expect(sent[1]?.lockVersion).toBe(4);
    expect(keeper.state().kind).toBe("saved");
  });

  it("takes a later draft of its own for an answer that got lost", async () => {
    const { keeper, sent } = keeperWith(lost, stale(WRITER), ok(5));
    keeper.changed();
    await vi.advanceTimersByTimeAsync(20_000);
    expect(sent.map(({ lockVersion }) => lockVersion)).toEqual([0, 0, 4]);
    expect(keeper.state().kind).toBe("saved");
  });

  it("sends nothing while it is published, so that it does not come back to life", async () => {
    const { keeper, sent } = keeperWith(ok(1));
    keeper.changed();
    keeper.pause();
    await vi.advanceTimersByTimeAsync(10_000);
    expect(sent).toEqual([]);
    keeper.resume();
    await vi.advanceTimersByTimeAsync(1000);
    expect(sent).toHaveLength(1);
  });
});
