import { describe, expect, it } from "vitest";
import { compareLedger, type ComparedReading } from "@/lib/calc/compare";
import { impossibilities } from "@/lib/calc/compare/impossible";
import { latestReadings } from "@/lib/calc/compare/latest-readings";
import { plannedBrew } from "@/lib/calc/compare/planned-brew";
import { intervals } from "@/lib/calc/ledger";
import { brewed, brewInput } from "../../support/brewed";
import { expectWithin } from "../../support/expect-within";

const ledger = brewed();
const predicted = intervals(brewInput());
const readings = (originalPlato: number, finalPlato: number): readonly ComparedReading[] => [
  { quantity: "fermenter.originalExtract", value: originalPlato, sd: 0.25 },
  { quantity: "fermenter.finalExtract", value: finalPlato, sd: 0.25 },
];
const ended = (originalPlato: number, finalPlato: number): ReturnType<typeof compareLedger> =>
  compareLedger({
    ledger,
    intervals: predicted,
    readings: readings(originalPlato, finalPlato),
  });
const measured = (result: ReturnType<typeof compareLedger>, id: string): number | null =>
  result.rows.find(({ quantity }) => quantity === id)?.measured ?? null;
const DRIER_THAN_DRY = "Taken as read, more would have fermented than the wort held.";

/** What these two readings would mean, whatever the plan says. */
const impossible = (originalPlato: number, finalPlato: number): readonly string[] =>
  impossibilities(plannedBrew(ledger), latestReadings(readings(originalPlato, finalPlato))).map((each) => each.words);

describe("a final gravity below 1.000", () => {
  it("gives the attenuation and the alcohol of a dry beer (Balling, by hand)", () => {
    const result = ended(10, -1);
    expectWithin(measured(result, "fermenter.attenuation") ?? NaN, 1.1, 1e-9);
    // 4.5979 % by mass × 0.99614 / 0.7907.
    expectWithin(measured(result, "package.alcohol") ?? NaN, 5.7926, 0.0005);
  });

  it("is no more than chance while it is near what alcohol and water alone read, −2.207 °P for 10 °P", () => {
    expect(impossible(10, -2.5)).not.toContain(DRIER_THAN_DRY);
    expect(measured(ended(10, -2.5), "fermenter.attenuation")).toBeNull();
    expect(measured(ended(10, -2.5), "package.alcohol")).toBeNull();
  });

  it("is impossible far below that: 0.256 °P is the uncertainty of the difference", () => {
    // √(0.25² + (0.2207 × 0.25)²) = 0.256 °P, 2.5758 times it 0.66 °P: from −2.87 °P on.
    expect(impossible(10, -2.8)).not.toContain(DRIER_THAN_DRY);
    expect(impossible(10, -2.9)).toContain(DRIER_THAN_DRY);
  });

  it("is refused for wort, and below what any beer reads", () => {
    expect(() => ended(-0.1, -1)).toThrow("Original extract -0.1 °P is outside 0 to 35 °P");
    expect(() => ended(10, -9.1)).toThrow("Final gravity -9.1 °P is outside -9 to 35 °P");
  });
});
