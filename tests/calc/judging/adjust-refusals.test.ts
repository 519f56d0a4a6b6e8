import { describe, expect, it } from "vitest";
import { adjustForJudge } from "@/lib/calc/judging";
import { expectWithin } from "../../support/expect-within";

describe("adjustForJudge without an answer", () => {
  it("names the groups that no score ties to each other", () => {
    expect(
      adjustForJudge({
        scores: [
          [30, 31, null, null],
          [null, null, 35, 36],
          [29, 33, null, null],
          [null, null, 34, 38],
        ],
        seed: 1,
      }),
    ).toEqual({
      ok: false,
      reason: "disconnected",
      groups: [
        { judges: [0, 2], entries: [0, 1] },
        { judges: [1, 3], entries: [2, 3] },
      ],
    });
  });

  it("names a judge without scores and an entry without judges", () => {
    expect(
      adjustForJudge({
        scores: [
          [30, 31, null],
          [29, 33, null],
          [null, null, null],
        ],
        seed: 1,
      }),
    ).toMatchObject({
      groups: [
        { judges: [0, 1], entries: [0, 1] },
        { judges: [2], entries: [] },
        { judges: [], entries: [2] },
      ],
    });
  });

  it("follows a chain of judges who share one entry each", () => {
    // Entry 2 ties judge 1 to judge 2, 38 against 34; the average judge gives it 36. Nothing is left to tell the scatter.
    expect(
      adjustForJudge({
        scores: [
          [30, 38, null],
          [null, 34, 31],
        ],
        seed: 1,
      }),
    ).toEqual({ ok: false, reason: "too-few-scores", adjusted: [28, 36, 33], severity: [-2, 2] });
  });

  it("leaves one judge's scores alone, and one entry's mean, without an error", () => {
    expect(adjustForJudge({ scores: [[30, 35, 31]], seed: 1 })).toEqual({
      ok: false,
      reason: "too-few-scores",
      adjusted: [30, 35, 31],
      severity: [0],
    });
    const one = adjustForJudge({ scores: [[30], [34]], seed: 1 });
    expect(one).toMatchObject({ ok: false, reason: "too-few-scores", adjusted: [32] });
    if (!one.ok && one.reason === "too-few-scores") {
      expectWithin(one.severity[0] ?? Number.NaN, 2, 1e-12);
      expectWithin(one.severity[1] ?? Number.NaN, -2, 1e-12);
    }
  });

  it("has no spread to show of a judge with one score", () => {
    const outcome = adjustForJudge({
      scores: [
        [30, 35, 31],
        [28, 35, 30],
        [null, 31, null],
      ],
      seed: 1,
    });
    expect(outcome.ok && outcome.judges[2]).toMatchObject({
      spread: null,
      expectedSpread: null,
      scatter: expect.closeTo(0, 9) as number,
    });
  });

  it("refuses no judges, rows of another length, impossible scores and a seed that is none", () => {
    const seed = 1;
    expect(() => adjustForJudge({ scores: [], seed })).toThrow("number of judges 0 is outside 1 to 200");
    expect(() => adjustForJudge({ scores: [[]], seed })).toThrow("number of entries 0 is outside 1 to 1000");
    expect(() => adjustForJudge({ scores: new Array<number[]>(201).fill([1]), seed })).toThrow("number of judges 201");
    expect(() => adjustForJudge({ scores: [new Array<number>(1001).fill(1)], seed })).toThrow("number of entries 1001");
    expect(() => adjustForJudge({ scores: [[1, 2], [1]], seed })).toThrow(
      "number of cells of judge 2 1 is outside 2 to 2",
    );
    expect(() => adjustForJudge({ scores: [[1, Number.NaN]], seed })).toThrow("score of judge 1 for entry 2 NaN");
    expect(() => adjustForJudge({ scores: [[1, 2e6]], seed })).toThrow("score of judge 1 for entry 2 2000000");
    expect(() => adjustForJudge({ scores: [[1, undefined as never]], seed })).toThrow(
      "score of judge 1 for entry 2 NaN",
    );
    expect(() => adjustForJudge({ scores: [[30, 31]], seed: Number.NaN })).toThrow(
      "seed NaN is outside 0 to 4294967295",
    );
  });
});
