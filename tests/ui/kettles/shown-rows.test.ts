import { describe, expect, it } from "vitest";
import type { LimitId } from "@/lib/calc/ledger";
import type { KettleFigures } from "@/lib/ui/kettles/kettle-figures";
import { readView } from "@/lib/ui/kettles/kettle-view";
import { inNameOrder, shownRows } from "@/lib/ui/kettles/shown-rows";
import { entryOf } from "../../support/kettle-table";

const entries = [
  entryOf("b", { kettleName: "Kettle 10", ownerName: "Zita" }),
  entryOf("a", { kettleName: "kettle 2", ownerName: "Ada" }),
  entryOf("none", { kettleName: null, ownerName: "Bo" }),
  entryOf("c", { kettleName: "Ålesund pot", ownerName: "Mia" }),
];

const reason = (id: LimitId) => ({ id, ok: false, value: 2, bound: 1, side: "at most", dimension: "mass" }) as const;

/** Only what the order and the filter look at is filled in. */
function figures(fit: KettleFigures["fit"], energy: number | null, broken: readonly LimitId[] = []): KettleFigures {
  const values = { "day.energy": energy } as KettleFigures["values"];
  return { fit, way: null, isWayLost: false, reasons: broken.map(reason), values, intervals: null };
}

const computed = new Map([
  ["a", figures("not", 5, ["grain basket", "boil volume"])],
  ["b", figures("fits", 7)],
  ["c", figures("way", null, ["boil volume"])],
]);

function keysFor(query: string, known: ReadonlyMap<string, KettleFigures> = computed): string[] {
  const view = readView(Object.fromEntries(new URLSearchParams(query)));
  const ordered = inNameOrder(entries, view);
  const isComplete = known.size === 3;
  return shownRows({ ordered, figures: known, view, isComplete }).map(({ entry }) => entry.key);
}

describe("the rows of the table of all kettles", () => {
  it("stand by the name of the kettle, numbers by value, and members without one at the end", () => {
    expect(keysFor("")).toEqual(["c", "a", "b", "none"]);
    expect(keysFor("order=down")).toEqual(["b", "a", "c", "none"]);
  });

  it("stand by the brewer, members without a kettle among them", () => {
    expect(keysFor("sort=brewer")).toEqual(["a", "none", "c", "b"]);
    expect(keysFor("sort=brewer&order=down")).toEqual(["b", "c", "none", "a"]);
  });

  it("stand by a number, those without one at the end in both directions", () => {
    expect(keysFor("sort=day.energy")).toEqual(["a", "b", "c", "none"]);
    expect(keysFor("sort=day.energy&order=down")).toEqual(["b", "a", "c", "none"]);
  });

  it("stand by how well the recipe fits: as it is, by a way out, not at all", () => {
    expect(keysFor("sort=fit")).toEqual(["b", "c", "a", "none"]);
  });

  it("keep the order of names until every figure is there, so that no row jumps", () => {
    const some = new Map([...computed].slice(0, 2));
    expect(keysFor("sort=day.energy&order=down", some)).toEqual(["c", "a", "b", "none"]);
  });

  it("are filtered by how they fit, by the limit that they break, and by a part of a name", () => {
    expect(keysFor("fit=fits")).toEqual(["b"]);
    expect(keysFor("fit=way")).toEqual(["c"]);
    expect(keysFor("fit=not")).toEqual(["a"]);
    expect(keysFor("fit=none")).toEqual(["none"]);
    expect(keysFor("why=boil+volume")).toEqual(["c", "a"]);
    expect(keysFor("why=boil+volume&fit=not")).toEqual(["a"]);
    expect(keysFor("name=KETTLE")).toEqual(["a", "b"]);
    expect(keysFor("name=bo")).toEqual(["none"]);
  });

  it("wait outside a filter by fit until they are computed", () => {
    expect(keysFor("fit=not", new Map())).toEqual([]);
    expect(keysFor("name=zita", new Map())).toEqual(["b"]);
  });
});
