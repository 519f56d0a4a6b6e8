import { describe, expect, it } from "vitest";
import { solveNormal } from "@/lib/calc/fermentation/normal-equations";
import { expectWithin } from "../../support/expect-within";

describe("solveNormal", () => {
  it("finds 1, −2 and 3 again (by hand)", () => {
    // 4 − 4 + 3 = 3, 2 − 10 + 9 = 1 and 1 − 6 + 18 = 13.
    const found = solveNormal(
      [
        [4, 2, 1],
        [2, 5, 3],
        [1, 3, 6],
      ],
      [3, 1, 13],
    );
    if (found === null) throw new Error("not positive");
    [1, -2, 3].forEach((value, row) => expectWithin(found[row] ?? NaN, value, 1e-12));
  });

  it("leaves the right side as it was", () => {
    const right = [2, 8];
    expect(
      solveNormal(
        [
          [4, 0],
          [0, 4],
        ],
        right,
      ),
    ).toEqual([0.5, 2]);
    expect(right).toEqual([2, 8]);
  });

  it("has no answer where two parameters do the same, where one does nothing, and to what is no number", () => {
    const twin = [
      [1, 1],
      [1, 1],
    ];
    expect(solveNormal(twin, [1, 1])).toBeNull();
    const idle = [
      [1, 0],
      [0, 0],
    ];
    expect(solveNormal(idle, [1, 1])).toBeNull();
    expect(solveNormal([[NaN]], [1])).toBeNull();
    expect(solveNormal([[-1]], [1])).toBeNull();
  });
});
