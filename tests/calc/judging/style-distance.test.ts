import { describe, expect, it } from "vitest";
import { styleDistance, type StyleFigure } from "@/lib/calc/judging";

const GRAVITY: StyleFigure = { value: 1.05, sd: null, low: 1.04, high: 1.048 };
const ALCOHOL: StyleFigure = { value: 4.4, sd: 0.2, low: 3.8, high: 4.6 };
const BITTERNESS: StyleFigure = { value: 22, sd: 10, low: 25, high: 40 };

describe("styleDistance", () => {
  it("is the root mean square of how far outside the figures are (docs/worked-examples.md#style-distance)", () => {
    const { distance, offCentre, figures } = styleDistance([GRAVITY, ALCOHOL, BITTERNESS]);
    expect(distance).toBeCloseTo(0.33665, 5);
    expect(offCentre).toBeCloseTo(1.09583, 5);
    expect(figures.map(({ deviation }) => deviation)).toEqual([expect.closeTo(0.5, 9), 0, expect.closeTo(-0.3, 9)]);
    expect(figures[0]?.outsideBy).toBeCloseTo(0.002, 9);
    expect(figures[2]?.outsideBy).toBe(-3);
  });

  it("gives the chance of being inside where the uncertainty is known, after the printed table of the normal integral", () => {
    const { figures } = styleDistance([GRAVITY, ALCOHOL, BITTERNESS]);
    expect(figures[0]?.chanceInside).toBeNull();
    // Φ(1) 0.84134, Φ(3) 0.99865, Φ(1.8) 0.96407, Φ(0.3) 0.61791 (Abramowitz and Stegun 1964, table 26.1).
    expect(figures[1]?.chanceInside).toBeCloseTo(0.84134 - (1 - 0.99865), 4);
    expect(figures[2]?.chanceInside).toBeCloseTo(0.96407 - 0.61791, 4);
  });

  it("is zero anywhere inside, the limits among it, and tells styles apart by their middles", () => {
    for (const value of [1.04, 1.044, 1.048]) expect(styleDistance([{ ...GRAVITY, value }]).distance).toBe(0);
    expect(styleDistance([{ ...GRAVITY, value: 1.044 }]).offCentre).toBeCloseTo(0, 9);
    expect(styleDistance([{ ...GRAVITY, value: 1.048 }]).offCentre).toBeCloseTo(1, 9);
  });

  it("does not depend on the unit, as long as it is one", () => {
    const times = (factor: number) => ({ value: 22 * factor, sd: 2 * factor, low: 25 * factor, high: 40 * factor });
    expect(styleDistance([times(2.5)]).distance).toBeCloseTo(styleDistance([times(1)]).distance, 12);
    expect(styleDistance([times(1)]).distance).toBeCloseTo(0.4, 12);
  });

  it("grows as a figure moves away, and less where it is hardly known", () => {
    const at = (value: number, sd: number | null) => styleDistance([{ ...BITTERNESS, value, sd }]).distance;
    const away = [40, 42, 50, 80].map((value) => at(value, null));
    expect(away).toEqual([...away].sort((a, b) => a - b));
    expect(at(50, 20)).toBeLessThan(at(50, 5));
  });

  it("knows a figure without uncertainty to be inside or not", () => {
    expect(styleDistance([{ ...ALCOHOL, sd: 0 }]).figures[0]?.chanceInside).toBe(1);
    expect(styleDistance([{ ...ALCOHOL, sd: 0, value: 5 }]).figures[0]?.chanceInside).toBe(0);
  });

  it("refuses no figures, and a range that is empty or upside down", () => {
    expect(() => styleDistance([])).toThrow("number of figures 0 is outside 1 to 100");
    expect(() => styleDistance([{ ...GRAVITY, high: 1.04 }])).toThrow("highest of the style 1.04 is outside");
    expect(() => styleDistance([{ ...GRAVITY, sd: -1 }])).toThrow("uncertainty of the figure -1 is outside 0 to 10000");
  });
});
