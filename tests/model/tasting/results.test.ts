import { describe, expect, it } from "vitest";
import { csvText } from "@/lib/model/csv";
import { feedbackOf } from "@/lib/model/tasting/results-feedback";
import { differenceResult } from "@/lib/model/tasting/results-difference";
import type { FlightFacts, JudgedEntry, TastingFacts } from "@/lib/model/tasting/results-facts";
import { followedFigures } from "@/lib/model/tasting/results-followed";
import { scoredResult } from "@/lib/model/tasting/results-scored";
import { TIDY_COLUMNS, tidyRows } from "@/lib/model/tasting/results-tidy";
import { BLANK_SHEET, type Sheet, type Strength } from "@/lib/model/tasting/sheet";

function sheetOf(total: number, bitter: Strength | null = null): Sheet {
  const flavour = Math.min(20, total);
  const scores = {
    aroma: Math.min(12, total - flavour),
    appearance: 0,
    flavour,
    mouthfeel: 0,
    overall: Math.max(0, total - 32),
  };
  return { ...BLANK_SHEET, scores, descriptors: bitter === null ? [] : [{ word: "bitter", strength: bitter }] };
}

const entry = (entryNo: number, bitterness: number | null = null, half80: number | null = null): JudgedEntry => ({
  ...{ entryNo, flightNo: 1, styleCode: "18B", beer: `Beer ${String(entryNo)}`, brewer: "Somebody", brewId: null },
  brewerIds: [],
  figures:
    bitterness === null
      ? []
      : [
          {
            ...{ quantity: "fermenter.bitterness", from: "computed", value: bitterness, sd: null },
            interval: half80 === null ? null : { low80: bitterness - half80, high80: bitterness + half80 },
          },
        ],
});

/** A flight of rows of judges and columns of entries; null where no sheet was handed in. */
function flightOf(scores: readonly (readonly (number | null)[])[], change: Partial<FlightFacts> = {}): FlightFacts {
  const judges = scores.map((_, at) => ({ judgeId: `judge ${String(at)}`, seat: at + 1, name: `Judge ${String(at)}` }));
  const cells = scores.flatMap((row, judge) =>
    row.map((total, at) => ({ judgeId: `judge ${String(judge)}`, entryNo: 401 + at, total })),
  );
  return {
    ...{ flightNo: 1, title: "Ales", kind: "scored" },
    entries: (scores[0] ?? []).map((_, at) => entry(401 + at)),
    judges,
    served: cells.map(({ judgeId, entryNo }) => ({ judgeId, entryNo })),
    sheets: cells.flatMap(({ judgeId, entryNo, total }) =>
      total === null ? [] : [{ judgeId, entryNo, total, sheet: sheetOf(total), enteredBy: null }],
    ),
    ...{ choices: [], begun: [] },
    ...change,
  };
}

const factsOf = (...flights: readonly FlightFacts[]): TastingFacts => ({
  ...{ id: "t", title: "Autumn tasting", heldOn: null, revealedAt: new Date(0), seed: 1 },
  flights,
});

describe("the result of a scored flight", () => {
  it("shares a rank between entries that are level, and leaves out the next one", () => {
    // Both judges give 30, 36, 36 and 20, one of them two points less: 29, 35, 35 and 19.
    const { entries } = scoredResult(
      flightOf([
        [30, 36, 36, 20],
        [28, 34, 34, 18],
      ]),
      1,
    );
    expect(entries.map(({ entry: { entryNo }, rank, isTied }) => [entryNo, rank, isTied])).toEqual([
      [402, 1, true],
      [403, 1, true],
      [401, 3, false],
      [404, 4, false],
    ]);
  });

  it("ranks by what is left when severity is taken off, not by the raw mean", () => {
    // The severe second judge, ten points below on 401, alone tasted 403: 30 from her is 40 to the mild one.
    const { entries } = scoredResult(
      flightOf([
        [38, 36, null],
        [28, null, 30],
        [33, 31, 35],
      ]),
      1,
    );
    expect(entries[0]?.entry.entryNo).toBe(403);
    expect(entries.map(({ rawMean }) => rawMean)).toEqual([32.5, 33, 33.5]);
  });

  it("says which entries cannot be compared, and ranks none of them", () => {
    const result = scoredResult(
      flightOf([
        [30, 31, null, null],
        [null, null, 44, 40],
      ]),
      1,
    );
    expect(result.adjustment).toMatchObject({ ok: false, reason: "disconnected" });
    expect(result.entries.map(({ rank, adjusted }) => [rank, adjusted])).toEqual([
      [null, null],
      [null, null],
      [null, null],
      [null, null],
    ]);
    expect(result.missing).toBe(4);
  });

  it("ranks without an interval where one judge tasted all", () => {
    const result = scoredResult(flightOf([[30, 35, 32]]), 1);
    expect(result.adjustment).toMatchObject({ ok: false, reason: "too-few-scores" });
    expect(result.entries.map(({ entry: { entryNo }, rank }) => [entryNo, rank])).toEqual([
      [402, 1],
      [403, 2],
      [401, 3],
    ]);
  });

  it("keeps an entry without a sheet, last and without a rank", () => {
    const { entries, agreement } = scoredResult(
      flightOf([
        [30, null, 41],
        [31, null, 43],
      ]),
      1,
    );
    expect(entries.map(({ entry: { entryNo }, rank }) => [entryNo, rank])).toEqual([
      [403, 1],
      [401, 2],
      [402, null],
    ]);
    // Both put 403 before 401: the same order.
    expect(agreement).toMatchObject({ judges: 2, entries: 2, concordance: { ok: true, w: 1 } });
  });

  it("has nothing to say without a sheet", () => {
    const result = scoredResult(flightOf([[null, null]]), 1);
    expect(result).toMatchObject({ adjustment: null, agreement: null, missing: 2 });
  });
});

describe("a triangle", () => {
  const answered = (right: number, wrong: number): FlightFacts => {
    const choices = Array.from({ length: right + wrong }, (_, at) => ({
      ...{ judgeId: `judge ${String(at)}`, choice: { glassNo: 417, note: "" } },
      ...{ isRight: at < right, enteredBy: null },
    }));
    return flightOf([], { kind: "triangle", choices });
  };

  it("needs 8 right of 12 for a risk of 5 %, and 7 are right by guessing with 0.0664 (ISO 4120, exact binomial)", () => {
    const { minimumRight, weighed } = differenceResult(answered(7, 5), "triangle");
    expect(minimumRight).toBe(8);
    expect(weighed?.p).toBeCloseTo(0.0664, 4);
  });

  it("shows nothing with two answers, and has nothing to weigh with none", () => {
    expect(differenceResult(answered(2, 0), "triangle").minimumRight).toBeNull();
    expect(differenceResult(answered(0, 0), "triangle").weighed).toBeNull();
  });
});

describe("taste beside figures", () => {
  const flight = (bitter: readonly (Strength | null)[], ibu: readonly (number | null)[]): FlightFacts =>
    flightOf([], {
      entries: ibu.map((value, at) => entry(401 + at, value)),
      sheets: bitter.map((strength, at) => ({
        ...{ judgeId: "judge 0", entryNo: 401 + at, total: 30, enteredBy: null },
        sheet: sheetOf(30, strength),
      })),
    });

  it("follows where the bitterer was called bitterer: three in one order, two orders of six as far by chance", () => {
    const [bitterness] = followedFigures([flight([null, 1, 3], [12, 30, 55])]);
    expect(bitterness?.entries.map(({ judged }) => judged)).toEqual([0, 1, 3]);
    expect(bitterness?.correlation).toEqual({ ok: true, rho: 1, p: 2 / 6 });
  });

  it("is not asked where the figures lie closer together than each is known", () => {
    const levelOf = (half80: number | null): boolean | undefined => {
      const entries = [33, 34, 35].map((value, at) => entry(401 + at, value, half80));
      return followedFigures([{ ...flight([null, 1, 3], [33, 34, 35]), entries }])[0]?.isLevel;
    };
    // Two units from the lowest to the highest.
    expect([levelOf(3), levelOf(1.5), levelOf(null)]).toEqual([true, false, false]);
  });

  it("leaves out entries without the figure, and says nothing of two", () => {
    const [bitterness] = followedFigures([flight([null, 1, 3], [12, null, 55])]);
    expect(bitterness?.entries).toHaveLength(2);
    expect(bitterness?.correlation).toBeNull();
  });
});

describe("feedback and export", () => {
  it("tells a brewer the mean of each part, and what how many found", () => {
    const facts = factsOf(
      flightOf([], {
        judges: [
          { judgeId: "a", seat: 1, name: "Alba" },
          { judgeId: "b", seat: 2, name: "Bela" },
        ],
        entries: [entry(401)],
        sheets: [
          { judgeId: "b", entryNo: 401, total: 32, sheet: sheetOf(32, 3), enteredBy: null },
          { judgeId: "a", entryNo: 401, total: 20, sheet: sheetOf(20, 1), enteredBy: null },
        ],
      }),
    );
    const [feedback] = feedbackOf(facts);
    expect(feedback?.means).toEqual({ aroma: 6, appearance: 0, flavour: 20, mouthfeel: 0, overall: 0 });
    expect(feedback?.found).toEqual([{ word: "bitter", judges: 2, strongest: 3 }]);
    expect(feedback?.sheets.map(({ seat, total }) => [seat, total])).toEqual([
      [1, 20],
      [2, 32],
    ]);
    expect(JSON.stringify(feedback)).not.toContain("Alba");
  });

  it("writes a row for each sheet and each answer, by seat, and every row as wide as its head", () => {
    const choices = [
      { judgeId: "judge 0", choice: { glassNo: 417, note: "sweeter" }, isRight: true, enteredBy: "The steward" },
    ];
    const rows = tidyRows(
      factsOf(
        flightOf([
          [30, 35],
          [28, null],
        ]),
        flightOf([[null]], { kind: "triangle", choices }),
      ),
    );
    expect(rows.map((row) => row.length)).toEqual([1, 2, 3, 4].map(() => TIDY_COLUMNS.length));
    const [first = [], , , last = []] = rows.map((row) =>
      Object.fromEntries(TIDY_COLUMNS.map((name, at) => [name, row[at]])),
    );
    expect(first).toMatchObject({ seat: 1, entry: 401, beer: "Beer 401", total_points: 30, flavour_points: 20 });
    expect(last).toMatchObject({
      ...{ kind: "triangle", seat: 1, entry: null, glass: 417 },
      ...{ is_right: "yes", note: "sweeter", from_paper: "yes" },
    });
    expect(csvText([TIDY_COLUMNS, ...rows])).not.toContain("Judge 0");
  });
});
