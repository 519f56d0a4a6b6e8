import { describe, expect, it } from "vitest";
import { NO_CHOICE, type AdaptationChoice } from "@/lib/model/adaptation";
import { choiceInView, readView, sheetQuery, viewQuery } from "@/lib/ui/kettles/kettle-view";

const read = (query: string) => readView(Object.fromEntries(new URLSearchParams(query)));

describe("the view of the table in the address", () => {
  it.each([
    "",
    "?rev=3",
    "?volume=written&name=copper&fit=not&why=grain+basket&sort=day.energy&order=down",
    "?fit=none&sort=brewer",
    "?volume=usual&table=plain",
  ])("is read and written without loss: %s", (query) => {
    expect(viewQuery(read(query))).toBe(query);
  });

  it("leaves out what it does not understand", () => {
    expect(viewQuery(read("?rev=-1&sort=weather&fit=perhaps&why=moon&volume=some&table=3d&order=up"))).toBe("");
    expect(readView({ rev: ["1", "2"], name: ["a", "b"] })).toEqual(readView({}));
  });

  it("gives a kettle's own sheet the revision and the volume, and nothing of the table", () => {
    expect(sheetQuery(read("?rev=2&volume=written&fit=not&sort=fit"))).toBe("?rev=2&volume=written");
  });
});

describe("the choice that a row is computed by", () => {
  const kept: AdaptationChoice = { volume: "written", way: "less volume", lots: { "hops.0": "a lot" } };

  it("is the one that was kept, where each brewer's own is asked for or the volume is the same", () => {
    expect(choiceInView(kept, "chosen")).toEqual(kept);
    expect(choiceInView(kept, "written")).toEqual(kept);
  });

  it("leaves the way out but keeps the lots where another volume is asked for", () => {
    expect(choiceInView(kept, "usual")).toEqual({ ...kept, volume: "usual", way: null });
  });

  it("is none where nobody chose", () => {
    expect(choiceInView(null, "chosen")).toEqual(NO_CHOICE);
    expect(choiceInView(null, "written")).toEqual({ ...NO_CHOICE, volume: "written" });
  });
});
