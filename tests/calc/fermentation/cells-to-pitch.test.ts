import { describe, expect, it } from "vitest";
import { cellsToPitch } from "@/lib/calc/fermentation";
import { degreesPlato, litres, millionPerMlPlato } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const cells = (volume: number, plato: number, rate: number): number =>
  cellsToPitch({
    litres: litres(volume),
    plato: degreesPlato(plato),
    millionPerMlPlato: millionPerMlPlato(rate),
  });

describe("cellsToPitch", () => {
  it.each([
    { rate: 0.75, billions: 180, source: "ale, common practice, no source" },
    { rate: 1.5, billions: 360, source: "lager, common practice, no source" },
  ])("is $billions billion for 20 L of 12 °P at $rate ($source)", ({ rate, billions }) => {
    expectWithin(cells(20, 12, rate), billions, 0.1);
  });

  it("is in proportion to volume, strength and rate", () => {
    expectWithin(cells(40, 12, 0.75), 2 * cells(20, 12, 0.75), 1e-9);
    expectWithin(cells(20, 18, 0.75), 1.5 * cells(20, 12, 0.75), 1e-9);
    expect(cells(0, 12, 0.75)).toBe(0);
  });

  it("refuses a rate that would be a paste", () => {
    expect(() => cellsToPitch({ litres: 20, plato: 12, millionPerMlPlato: 11 } as never)).toThrow(
      "pitch rate 11 million/(mL·°P) is outside 0 to 10 million/(mL·°P)",
    );
  });
});
