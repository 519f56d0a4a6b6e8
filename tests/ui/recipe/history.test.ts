import { describe, expect, it } from "vitest";
import type { Draft } from "@/lib/ui/recipe/draft";
import { NO_HISTORY, recorded, redone, undone, type History } from "@/lib/ui/recipe/history";

// Only which draft it is matters here, not what stands in it.
const draft = (name: string) => ({ name }) as unknown as Draft;
const step = (history: History, before: string, field: string | null = null, atMs = 0): History =>
  recorded(history, { before: draft(before), words: `from ${before}`, field, atMs });

describe("history", () => {
  it("goes back step by step and forth again to where it was", () => {
    const history = step(step(NO_HISTORY, "a"), "b");
    const back = undone(history, draft("c"));
    expect(back?.draft).toEqual(draft("b"));
    const further = back === null ? null : undone(back.history, back.draft);
    expect(further?.draft).toEqual(draft("a"));
    const forth = further === null ? null : redone(further.history, further.draft);
    expect(forth?.draft).toEqual(draft("b"));
    expect(forth?.history.told).toBe("Done again: from a");
  });

  it("takes typing on in one field as one step, until somebody pauses or types elsewhere", () => {
    const typing = step(step(step(NO_HISTORY, "", "boil", 0), "7", "boil", 400), "75", "boil", 900);
    expect(typing.past).toHaveLength(1);
    expect(undone(typing, draft("75."))?.draft).toEqual(draft(""));
    expect(step(typing, "75.", "boil", 10_000).past).toHaveLength(2);
    expect(step(typing, "75.", "notes", 1000).past).toHaveLength(2);
  });

  it("begins a new step after one was taken back", () => {
    const back = undone(step(NO_HISTORY, "a", "boil", 0), draft("b"));
    expect(back === null ? 0 : step(back.history, "a", "boil", 100).past).toHaveLength(1);
  });

  it("forgets what was undone once something else is done", () => {
    const back = undone(step(NO_HISTORY, "a"), draft("b"));
    expect(back === null ? null : redone(step(back.history, "a"), draft("c"))).toBeNull();
  });

  it("keeps far more than fifty steps", () => {
    let history = NO_HISTORY;
    for (let i = 0; i < 100; i += 1) history = step(history, String(i));
    expect(history.past).toHaveLength(100);
  });

  it("has nowhere to go from the beginning", () => {
    expect(undone(NO_HISTORY, draft("a"))).toBeNull();
    expect(redone(NO_HISTORY, draft("a"))).toBeNull();
  });
});
