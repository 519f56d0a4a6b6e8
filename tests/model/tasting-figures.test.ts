import { describe, expect, it } from "vitest";
import type { SummaryFigure, SummaryOfBrew } from "@/lib/model/summary/brew-summary";
import { beerFigures } from "@/lib/model/tasting/prepare";
import {
  checkAgainst,
  figuresOfBeer,
  figuresOfBrew,
  nearestStyles,
  styleNamed,
} from "@/lib/model/tasting/prepare-figures";
import type { StyledQuantity } from "@/lib/model/style-spans";

const stated = (known: object) =>
  figuresOfBeer(
    beerFigures.parse({
      ...{ originalGravity: null, finalGravity: null, alcohol: null, bitterness: null, colour: null },
      ...known,
    }),
  );

const figure = (quantity: StyledQuantity, measured: number | null): SummaryFigure => ({
  ...{ quantity, derived: false, planned: 12, plannedLow80: 11.5, plannedHigh80: 12.5, measured },
  ...{ measuredSd: measured === null ? null : 0.25, measuredLow80: null, measuredHigh80: null },
  ...{ expectation: null, reconciled: null },
});

const summaryOf = (...figures: readonly SummaryFigure[]): SummaryOfBrew => ({
  ...{ figures: [...figures], account: null, suspects: [] },
  counts: { entries: 0, readings: 0, series: 0 },
});

describe("the figures of an entry", () => {
  it("are measured where somebody read them, and computed with their interval where nobody did", () => {
    const summary = summaryOf(figure("fermenter.originalExtract", 12.6), figure("fermenter.finalExtract", null));
    const predicted = {
      "fermenter.originalExtract": { value: 12, low80: 11.5, high80: 12.5 },
      "fermenter.bitterness": { value: 35, low80: 28.592, high80: 41.408 },
    };
    // 80 % of a normal distribution lie within 1.2816 standard deviations: 12.816 / 2.5631 = 5.
    expect(figuresOfBrew(summary, predicted)).toEqual([
      { quantity: "fermenter.originalExtract", from: "measured", value: 12.6, sd: 0.25, interval: null },
      {
        quantity: "fermenter.bitterness",
        from: "computed",
        value: 35,
        sd: expect.closeTo(5, 3) as number,
        interval: { low80: 28.592, high80: 41.408 },
      },
    ]);
  });

  it("of a beer from elsewhere are what its brewer says, as far as it is said", () => {
    expect(stated({ alcohol: 4.4, colour: "22" })).toEqual([
      { quantity: "package.alcohol", from: "stated", value: 4.4, sd: null, interval: null },
      { quantity: "fermenter.colour", from: "stated", value: 22, sd: null, interval: null },
    ]);
  });
});

describe("the styles nearest to a beer", () => {
  it("begin with the one whose published ranges hold every figure (BJCP 2021, 11B Best Bitter: 1.040 to 1.048, 25 to 40 IBU)", () => {
    const bitter = { originalGravity: 1.044, finalGravity: 1.01, alcohol: 4.2, bitterness: 32.5, colour: 23.6 };
    const [nearest, ...others] = nearestStyles(stated(bitter), 5);
    expect(nearest?.code).toBe("11B");
    expect(nearest?.distance).toBe(0);
    const distances = others.map(({ distance }) => distance);
    expect(distances).toEqual([...distances].sort((a, b) => a - b));
  });

  it("leave out those without numbers, and are none where nothing is known", () => {
    expect(nearestStyles(stated({}), 5)).toEqual([]);
    const all = nearestStyles(stated({ alcohol: 5 }), 1000).map(({ code }) => code);
    for (const code of all) expect(styleNamed(code)?.figures).not.toBeNull();
  });

  it("say how far outside a figure is, in its own unit: 5.4 % is 0.8 above 3.8 to 4.6 %", () => {
    const style = styleNamed("11B");
    if (style === null) throw new Error("11B is a style of the list");
    const [alcohol] = checkAgainst(stated({ alcohol: 5.4 }), style)?.figures ?? [];
    expect(alcohol?.place.outsideBy).toBeCloseTo(0.8, 9);
    // Half of 0.8 is the half-width: two of them.
    expect(alcohol?.place.deviation).toBeCloseTo(2, 9);
  });
});
