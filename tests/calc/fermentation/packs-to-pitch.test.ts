import { describe, expect, it } from "vitest";
import { packsToPitch } from "@/lib/calc/fermentation";
import { billionCells } from "@/lib/calc/units";

const packs = (cells: number, cellsInPack: number): number =>
  packsToPitch({ cells: billionCells(cells), cellsInPack: billionCells(cellsInPack) });

describe("packsToPitch", () => {
  // By hand: 180 / 77.5 is 2.32, 180 / 60 is 3, 180 / 59.9 is 3.005, 0.3 / 0.1 is 3 but for floating point.
  it.each([
    [180, 77.5, 3],
    [180, 60, 3],
    [180, 59.9, 4],
    [0.3, 0.1, 3],
    [0, 100, 0],
    [1, 100, 1],
  ])("opens for %d billion cells, in packs of %d, %d", (cells, inPack, expected) => {
    expect(packs(cells, inPack)).toBe(expected);
  });

  it("always holds enough, and one pack less does not", () => {
    for (let cells = 7; cells < 400; cells += 13) {
      const opened = packs(cells, 23);
      expect(opened * 23).toBeGreaterThanOrEqual(cells);
      expect((opened - 1) * 23).toBeLessThan(cells);
    }
  });

  it("refuses a pack of nothing", () => {
    expect(() => packs(180, 0)).toThrow("cells in a pack 0 10⁹ is outside 0.001 to 1000000000 10⁹");
  });
});
