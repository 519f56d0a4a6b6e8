import { describe, expect, it } from "vitest";
import { leftoverOf, lostOf, withLeftover, withoutNames } from "@/lib/model/exchange/leftover";

/** What a file says, and what an export of the recipe that was made of it says. */
const FILE = {
  name: "Lock ale",
  author: "Nobody Atall",
  house_code: "L-1",
  batch: { value: 5, unit: "gal" },
  hops: [
    { name: "Barge hop", grams: 10, note: "from the towpath" },
    { name: "Barge hop", grams: 20, note: "later" },
    { name: "Reed", grams: 1 },
  ],
};
const FIRST = { name: "Barge hop", grams: 10 };
const SECOND = { name: "Barge hop", grams: 20 };
const EXPORTED = {
  name: "Lock ale",
  batch: { value: 18.927, unit: "l" },
  hops: [FIRST, SECOND],
};
const entries = leftoverOf(FILE, EXPORTED);
const places = (lost: ReturnType<typeof lostOf>) => lost.map(({ path }) => path);

describe("what a file left over", () => {
  it("makes the file again of the export", () => {
    expect(withLeftover(EXPORTED, entries)).toEqual({ ...EXPORTED, ...FILE });
    expect(lostOf(EXPORTED, entries)).toEqual([]);
  });

  it("follows its row where rows change places", () => {
    const reordered = { ...EXPORTED, hops: [{ name: "New hop", grams: 5 }, FIRST, SECOND] };
    expect(lostOf(reordered, entries)).toEqual([]);
    expect(withLeftover(reordered, entries).hops).toContainEqual(FILE.hops[0]);
  });

  it("is lost, place by place, where a revision says something else or has no such row", () => {
    const revised = { ...EXPORTED, batch: { value: 20, unit: "l" }, hops: [FIRST] };
    expect(places(lostOf(revised, entries))).toEqual([["batch"], ["hops", { name: "Barge hop", nth: 1 }, "note"]]);
    expect(withLeftover(revised, entries).batch).toEqual({ value: 20, unit: "l" });
  });

  it("is not lost where a revision has come to say what the file said", () => {
    expect(lostOf({ ...EXPORTED, batch: { value: 5, unit: "gal" } }, entries)).toEqual([]);
  });

  it("is published without whoever wrote the file", () => {
    const shown = withoutNames(entries);
    expect(JSON.stringify(shown)).toContain("L-1");
    expect(JSON.stringify(shown)).not.toContain("Nobody Atall");
    const xml = leftoverOf({ BREWER: "A", ASST_BREWER: "B", EQUIPMENT: { NAME: "C's pot" } }, {});
    expect(withoutNames(xml)).toEqual([]);
  });
});
