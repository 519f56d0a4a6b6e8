import { describe, expect, it } from "vitest";
import { compareLedger, MEASURABLE, type ComparedReading, type MeasurableQuantity } from "@/lib/calc/compare";
import { brewWithWater, intervals } from "@/lib/calc/ledger";
import { fraction, kilogramsPerHour, litres } from "@/lib/calc/units";
import { brewed, brewInput, exactly, valueOf } from "../../support/brewed";
import { expectWithin } from "../../support/expect-within";
import { readingsOf } from "../../support/readings-of";

const ledger = brewed();
const predicted = intervals(brewInput());

const suspectsOf = (readings: readonly ComparedReading[]) =>
  compareLedger({ ledger, intervals: predicted, readings }).suspects;

const only = (readings: readonly ComparedReading[], ...kept: readonly MeasurableQuantity[]): ComparedReading[] =>
  readings.filter(({ quantity }) => kept.includes(quantity));

/** What this kettle makes of the planned water when one of its figures is not as stated. */
function brewedOtherwise(changes: Parameters<typeof brewInput>[0]): ReturnType<typeof brewed> {
  const water = (id: "water.mash" | "water.sparge") => 0.9982 * valueOf(ledger, id);
  const outcome = brewWithWater({
    ...brewInput(changes),
    mashWaterKg: water("water.mash"),
    spargeKg: water("water.sparge"),
  });
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.ledger;
}

/** Errors that a tired brewer makes: a mark misread on the stick, two digits changed on the hydrometer. */
const GROSS_ERRORS = [
  { quantity: "kettle.preBoil", by: 4 },
  { quantity: "kettle.preBoil", by: -4 },
  { quantity: "kettle.preBoilGravity", by: 2.5 },
  { quantity: "kettle.preBoilGravity", by: -2.5 },
  { quantity: "kettle.postBoil", by: 4 },
  { quantity: "kettle.postBoil", by: -4 },
  { quantity: "fermenter.volume", by: 4 },
  { quantity: "fermenter.volume", by: -4 },
  { quantity: "fermenter.originalExtract", by: 2.5 },
  { quantity: "fermenter.originalExtract", by: -2.5 },
  { quantity: "mash.firstWort", by: 4 },
] as const;

describe("suspects", () => {
  it.each(GROSS_ERRORS)("names $quantity when it alone is off by $by, and what it should have been", (error) => {
    const right = valueOf(ledger, error.quantity);
    const suspects = suspectsOf(readingsOf(ledger, { [error.quantity]: right + error.by }));
    expect(suspects.map(({ quantity }) => quantity)).toEqual([error.quantity]);
    const [suspect] = suspects;
    expect(suspect?.test).toBe("balance");
    expect(suspect?.words).toContain("balances of water and extract do not close");
    // The other readings are exact here, so they put it back within their own uncertainty.
    expectWithin(suspect?.shouldBe ?? 0, right, suspect?.shouldBeSd ?? 0);
  });

  it("names two wrong readings, one after the other", () => {
    const wrong = { "kettle.preBoilGravity": 17, "fermenter.volume": 15 };
    const named = suspectsOf(readingsOf(ledger, wrong)).map(({ quantity }) => quantity);
    expect(named.sort()).toEqual(["fermenter.volume", "kettle.preBoilGravity"]);
  });

  it("blames no reading when the mash dissolved far less than planned and all readings show it", () => {
    const poor = brewedOtherwise({ lauter: { conversion: exactly(fraction(0.75)) } });
    expect(suspectsOf(readingsOf(poor))).toEqual([]);
  });

  it("blames no reading when the kettle boiled off twice as much or kept more trub than its figures say", () => {
    expect(suspectsOf(readingsOf(brewedOtherwise({ kettle: { boilOff: exactly(kilogramsPerHour(5)) } })))).toEqual([]);
    expect(suspectsOf(readingsOf(brewedOtherwise({ kettle: { trub: exactly(litres(5)) } })))).toEqual([]);
  });

  it("accuses few readings that are off by chance alone", () => {
    let state = 20261125;
    // Park and Miller's generator, twelve of its numbers to a nearly normal deviate.
    const uniform = (): number => (state = (state * 48271) % 2147483647) / 2147483647;
    const normal = (): number => Array.from({ length: 12 }, uniform).reduce((sum, each) => sum + each, -6);
    const accused = Array.from({ length: 100 }, () => {
      const noisy = readingsOf(ledger).map((each) => ({
        ...each,
        value: Math.max(0, each.value + each.sd * normal()),
      }));
      return suspectsOf(noisy).length > 0;
    }).filter(Boolean);
    // The test doubts at 1 %, the order of readings at 1 %: of 100 brews more than 6 would be beyond chance.
    expect(accused.length).toBeLessThanOrEqual(6);
  });

  it("sees that gravity cannot fall during the boil, with two readings alone", () => {
    const readings = only(readingsOf(ledger, { "fermenter.originalExtract": 9 }), "fermenter.originalExtract");
    const before = only(readingsOf(ledger), "kettle.preBoilGravity");
    const [suspect, ...more] = suspectsOf([...before, ...readings]);
    expect(more).toEqual([]);
    expect(suspect?.quantity).toBe("fermenter.originalExtract");
    expect(suspect?.words).toContain("gravity would have fallen during the boil");
  });

  it("sees that a beer cannot be stronger than its wort", () => {
    const [suspect] = suspectsOf(readingsOf(ledger, { "fermenter.finalExtract": 20 }));
    expect(suspect).toMatchObject({
      quantity: "fermenter.finalExtract",
      test: "order",
      alternatives: ["fermenter.originalExtract"],
      words: "Taken as read, the beer would hold more extract than its wort did.",
    });
  });

  it("sees that no more beer can be packaged than was in the fermenter", () => {
    const [suspect] = suspectsOf(readingsOf(ledger, { "package.volume": 26 }));
    expect(suspect).toMatchObject({ quantity: "package.volume", test: "order" });
  });

  it("falls back on the plan, and says so, where nothing else checks a reading", () => {
    const [suspect, ...more] = suspectsOf(readingsOf(ledger, { "water.strike": 22 }));
    expect(more).toEqual([]);
    expect(suspect).toMatchObject({ quantity: "water.strike", test: "plan", z: null });
    expect(suspect?.words).toContain("far from the plan");
    expect(suspectsOf(readingsOf(ledger, { "water.strike": 70 }))).toEqual([]);
  });

  it("holds a single wort reading against the plan only when it is absurd", () => {
    const gravity = (value: number) => suspectsOf([{ quantity: "kettle.preBoilGravity", value, sd: 0.25 }]);
    expect(gravity(11)).toEqual([]);
    expect(gravity(1.4)).toMatchObject([{ quantity: "kettle.preBoilGravity", test: "plan" }]);
  });

  it("takes the usual uncertainty of the instrument where none was stated", () => {
    const unsure = readingsOf(ledger, { "kettle.preBoil": 30 });
    const stated = unsure.map((each) => ({ ...each, sd: 0 }));
    expect(suspectsOf(stated)).toEqual(suspectsOf(unsure));
    expect(MEASURABLE["kettle.preBoil"].typicalSd).toBe(0.3);
  });

  it("names nobody when there is nothing to compare with", () => {
    expect(suspectsOf([])).toEqual([]);
    expect(compareLedger({ ledger, intervals: {}, readings: readingsOf(ledger) }).suspects).toEqual([]);
  });
});
