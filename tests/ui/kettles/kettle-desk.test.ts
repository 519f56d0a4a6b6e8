import { describe, expect, it } from "vitest";
import { intervals } from "@/lib/calc/ledger";
import { adaptWith, NO_CHOICE, wayName } from "@/lib/model/adaptation";
import type { KettleToAdapt } from "@/lib/model/kettle-entry";
import { recipeIntention } from "@/lib/model/recipe-intention";
import type { FromDesk, ToDesk } from "@/lib/ui/kettles/desk-messages";
import { KettleDesk } from "@/lib/ui/kettles/kettle-desk";
import type { KettleFigures } from "@/lib/ui/kettles/kettle-figures";
import { roomyKettle, smallKettle, tableContent } from "../../support/kettle-table";

/** A desk whose slices run one row each, and only when told to. */
function openDesk() {
  const posted: FromDesk[] = [];
  const tasks: (() => void)[] = [];
  let time = 0;
  const desk = new KettleDesk({
    post: (message) => posted.push(message),
    soon: (task) => tasks.push(task),
    now: () => (time += 1000),
  });
  const runOne = (): boolean => {
    const task = tasks.shift();
    task?.();
    return task !== undefined;
  };
  const runAll = (): void => {
    while (runOne()) continue;
  };
  const figures = (): [string, KettleFigures][] =>
    posted.flatMap((message) => (message.kind === "figures" ? message.rows.map((row) => [...row] as const) : [])) as [
      string,
      KettleFigures,
    ][];
  return { desk, posted, runOne, runAll, figures };
}

const open = (change: Partial<Extract<ToDesk, { kind: "open" }>> = {}): ToDesk => ({
  kind: "open",
  run: 0,
  content: tableContent,
  volume: "chosen",
  kept: [],
  done: [],
  ...change,
});

function kettles(...ids: readonly string[]): ToDesk {
  const lines = ids.map((id) => {
    const kettle: KettleToAdapt = { id, equipment: id.startsWith("small") ? smallKettle : roomyKettle, lots: [] };
    return JSON.stringify(kettle);
  });
  return { kind: "kettles", lines };
}

function directly(equipment: typeof roomyKettle) {
  const written = recipeIntention(tableContent);
  if (written === null) throw new Error("the sample recipe does not brew");
  return adaptWith({ content: tableContent, written, equipment, choice: NO_CHOICE, lots: new Map() });
}

// A search for ways out brews a hundred times.
const LONG = 30_000;

describe("the desk that computes the rows", { timeout: LONG }, () => {
  it("gives what the calculation gives, first the figures of all rows and then their intervals", () => {
    const { desk, runAll, figures } = openDesk();
    desk.receive(open());
    desk.receive(kettles("roomy", "small"));
    runAll();
    expect(figures().map(([id, row]) => [id, row.intervals !== null])).toEqual([
      ["roomy", false],
      ["small", false],
      ["roomy", true],
      ["small", true],
    ]);
    const { chosen } = directly(roomyKettle);
    const [, roomy] = figures()[2] ?? [];
    expect(roomy?.fit).toBe("fits");
    expect(roomy?.values["mash.grist"]).toBe(chosen?.ledger.quantities["mash.grist"]);
    const recipe = chosen?.recipe;
    if (recipe === undefined) throw new Error("the sample recipe does not fit the roomy kettle");
    const expected = intervals({ recipe, equipment: roomyKettle, ambient: tableContent.writtenOn.ambient });
    expect(roomy?.intervals?.["day.time"]).toEqual(expected["day.time"]);
    expect(roomy?.intervals?.["mash.grist"]).toBeUndefined();
    const [, small] = figures()[3] ?? [];
    expect(small?.fit).toBe("not");
    expect(small?.reasons.map(({ id }) => id)).toContain("grain basket");
  });

  it("takes the rows in view before the others", () => {
    const { desk, runAll, figures } = openDesk();
    desk.receive(open());
    desk.receive({ kind: "look", ids: ["c", "unknown"] });
    desk.receive(kettles("a", "b", "c"));
    runAll();
    expect(figures().map(([id]) => id)).toEqual(["c", "a", "b", "c", "a", "b"]);
  });

  it("does not compute again what came with the page, but does for another volume", () => {
    const { desk, runAll, figures } = openDesk();
    desk.receive(open({ done: ["a"] }));
    desk.receive(kettles("a", "b"));
    runAll();
    expect(new Set(figures().map(([id]) => id))).toEqual(new Set(["b"]));
    desk.receive({ kind: "volume", run: 1, volume: "written" });
    runAll();
    expect(new Set(figures().map(([id]) => id))).toEqual(new Set(["a", "b"]));
    const [, row] = figures().at(-1) ?? [];
    expect(row?.values["fermenter.volume"]).toBeCloseTo(tableContent.recipe.intoFermenter, 6);
  });

  it("marks its answers with the run that they belong to", () => {
    const { desk, posted, runOne, runAll } = openDesk();
    desk.receive(open());
    desk.receive(kettles("a"));
    runOne();
    desk.receive({ kind: "volume", run: 7, volume: "written" });
    runAll();
    const runs = posted.map((message) => (message.kind === "figures" ? message.run : null));
    expect(runs).toEqual([0, 7, 7]);
  });

  it("computes a row anew along the way out that was kept, and says when that way is lost", () => {
    const { desk, runAll, figures } = openDesk();
    const outcome = directly(smallKettle).outcome;
    const way = outcome.ok ? undefined : outcome.waysOut[0];
    if (way === undefined) throw new Error("the small kettle has no way out");
    desk.receive(open());
    desk.receive(kettles("small", "roomy"));
    desk.receive({ kind: "keep", id: "small", choice: { ...NO_CHOICE, way: wayName(way) } });
    desk.receive({ kind: "keep", id: "roomy", choice: { ...NO_CHOICE, way: wayName(way) } });
    runAll();
    const last = new Map(figures());
    expect(last.get("small")).toMatchObject({ fit: "way", way: { kind: way.kind, figure: way.figure } });
    expect(last.get("small")?.values["mash.grist"]).toBe(way.ledger.quantities["mash.grist"]);
    expect(last.get("roomy")).toMatchObject({ fit: "fits", way: null });
    desk.receive({ kind: "keep", id: "small", choice: { ...NO_CHOICE, way: "more volume" } });
    runAll();
    expect(new Map(figures()).get("small")).toMatchObject({ fit: "not", way: null, isWayLost: true });
  });

  it("answers what a number is and which ways out there are, and nothing about a kettle that it does not have", () => {
    const { desk, posted } = openDesk();
    desk.receive(open());
    desk.receive(kettles("small"));
    desk.receive({ kind: "explain", request: 1, id: "small", number: "day.energy" });
    desk.receive({ kind: "explain", request: 2, id: "small", number: "hops" });
    desk.receive({ kind: "detail", request: 3, id: "small" });
    desk.receive({ kind: "detail", request: 4, id: "elsewhere" });
    const { outcome } = directly(smallKettle);
    expect(posted[0]).toMatchObject({
      kind: "explained",
      request: 1,
      cell: {
        explanation: { value: outcome.ledger?.quantities["day.energy"], dimension: "energy" },
        interval: { low80: expect.any(Number) as number },
      },
    });
    const grams = outcome.recipe?.hops.map((hop) => hop.grams) ?? [];
    expect(posted[1]).toMatchObject({
      cell: { interval: null, explanation: { value: grams.reduce((sum, each) => sum + each, 0) } },
    });
    const ways = outcome.ok ? [] : outcome.waysOut.map(({ kind }) => kind);
    expect(ways.length).toBeGreaterThan(2);
    expect(posted[2]).toMatchObject({ kind: "detail", request: 3, detail: { fits: false } });
    expect(posted[2]?.kind === "detail" && posted[2].detail?.ways.map(({ kind }) => kind)).toEqual(ways);
    expect(posted[3]).toEqual({ kind: "detail", request: 4, detail: null });
  });
});
