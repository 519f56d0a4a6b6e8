import { describe, expect, it } from "vitest";
import { type DipStickMark, type DipStickTable, dipStickVolume } from "@/lib/calc/kettle";
import { litres } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const mark = (reading: number, volume: number, sd: number): DipStickMark => ({ reading, litres: litres(volume), sd });
const TABLE: DipStickTable = { unit: "mm", marks: [mark(50, 5, 0.05), mark(100, 11, 0.07), mark(300, 35, 0.11)] };

describe("dipStickVolume", () => {
  it("is the volume of a mark at the mark", () => {
    for (const { reading, litres: volume, sd } of TABLE.marks) {
      expect(dipStickVolume({ table: TABLE, reading })).toEqual({ ok: true, litres: volume, sd });
    }
  });

  it("runs straight between two marks: halfway from 11 to 35 L is 23 L ± 0.09", () => {
    const found = dipStickVolume({ table: TABLE, reading: 200 });
    if (!found.ok) throw new Error(found.reason);
    expectWithin(found.litres, 23, 1e-12);
    expectWithin(found.sd, 0.09, 1e-12);
  });

  it("adds the uncertainty of the reading through the slope: 2 mm at 0.12 L/mm beside 0.09 L", () => {
    const found = dipStickVolume({ table: TABLE, reading: 200, readingSd: 2 });
    expectWithin(found.ok ? found.sd : NaN, Math.sqrt(0.09 ** 2 + 0.24 ** 2), 1e-12);
  });

  it("rises with the reading", () => {
    const volumes = Array.from({ length: 26 }, (_, i) => dipStickVolume({ table: TABLE, reading: 50 + 10 * i }));
    const read = volumes.map((found) => (found.ok ? Number(found.litres) : NaN));
    expect(read).toEqual([...read].sort((a, b) => a - b));
    expect(new Set(read).size).toBe(read.length);
  });

  it("has no answer outside the table, and says how far the table reaches", () => {
    expect(dipStickVolume({ table: TABLE, reading: 49 })).toEqual({
      ok: false,
      reason: "below-table",
      from: 50,
      to: 300,
    });
    expect(dipStickVolume({ table: TABLE, reading: 301 })).toEqual({
      ok: false,
      reason: "above-table",
      from: 50,
      to: 300,
    });
  });

  it("refuses a table of one mark, and one that falls", () => {
    const of = (...marks: readonly DipStickMark[]): DipStickTable => ({ unit: "mm", marks });
    expect(() => dipStickVolume({ table: of(mark(50, 5, 0)), reading: 50 })).toThrow("number of marks 1");
    const falls = of(mark(50, 5, 0), mark(60, 4, 0));
    expect(() => dipStickVolume({ table: falls, reading: 50 })).toThrow("volume of a mark 4 L is outside 5.000001");
    const back = of(mark(50, 5, 0), mark(40, 6, 0));
    expect(() => dipStickVolume({ table: back, reading: 50 })).toThrow("reading of a mark 40 is outside 50.000001");
  });
});
