import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  compareLedger,
  MEASURABLE,
  MEASURABLE_QUANTITIES,
  type ComparedReading,
  type ComparedRow,
  type LedgerComparison,
} from "@/lib/calc/compare";
import { intervals } from "@/lib/calc/ledger";
import { litres, metres, minutes } from "@/lib/calc/units";
import { brewed, brewInput, valueOf } from "../../support/brewed";
import { expectWithin } from "../../support/expect-within";
import { readingsOf } from "../../support/readings-of";

type Changes = Parameters<typeof brewInput>[0];

const ledger = brewed();
const predicted = intervals(brewInput());
const compare = (readings: readonly ComparedReading[]): LedgerComparison =>
  compareLedger({ ledger, intervals: predicted, readings });

function rowOf({ rows }: LedgerComparison, quantity: ComparedRow["quantity"]): ComparedRow {
  const row = rows.find((each) => each.quantity === quantity);
  if (row === undefined) throw new Error(`no row for ${quantity}`);
  return row;
}

const OTHER_KETTLES: readonly { readonly name: string; readonly changes: Changes }[] = [
  { name: "no sparge", changes: { lauter: { method: "none" }, recipe: { thickness: null } } },
  { name: "batch sparge in a tun", changes: { lauter: { method: "batch" }, mash: { kind: "tun", heated: false } } },
  { name: "water after the boil", changes: { recipe: { topUp: litres(4) } } },
  { name: "two mashes", changes: { recipe: { mashes: 2 } } },
  { name: "an open kettle", changes: { kettle: { lid: false } } },
  { name: "1 600 m of altitude", changes: { equipment: { altitude: metres(1600) } } },
  { name: "no boil and no stand", changes: { recipe: { boil: minutes(0), stand: null } } },
];

describe("compareLedger", () => {
  it("finds no difference and no suspect where every reading is as planned", () => {
    const { rows, suspects } = compare(readingsOf(ledger));
    expect(suspects).toEqual([]);
    for (const row of rows) {
      expectWithin(row.difference ?? Number.NaN, 0, 1e-9 * row.planned);
      expect(row.expectation).toBe("inside");
      if (row.reconciled !== null) expectWithin(row.reconciled, row.planned, 1e-6 * row.planned);
    }
  });

  it.each(OTHER_KETTLES)("does so with $name: the derived numbers are defined as the ledger's", ({ changes }) => {
    const other = brewed(changes);
    const { rows, suspects } = compareLedger({
      ledger: other,
      intervals: intervals(brewInput(changes)),
      readings: readingsOf(other),
    });
    expect(suspects).toEqual([]);
    for (const row of rows) expectWithin(row.difference ?? Number.NaN, 0, 1e-9 * (1 + row.planned));
  });

  it("has a row for everything that can be measured, in the order of the process, and no value without a reading", () => {
    const { rows } = compare([]);
    expect(rows.filter((row) => !row.derived).map((row) => row.quantity)).toEqual(
      expect.arrayContaining([...MEASURABLE_QUANTITIES]),
    );
    const stations = ["water", "mash", "lauter", "kettle", "stand", "fermenter", "package"];
    const order = rows.map((row) => stations.indexOf(row.station));
    expect(order).toEqual([...order].sort((one, other) => one - other));
    for (const row of rows) {
      expect([row.measured, row.measuredSd, row.difference, row.expectation]).toEqual([null, null, null, null]);
    }
  });

  it("lets the last reading of a quantity count", () => {
    const first = { quantity: "fermenter.volume", value: 19, sd: 0.3 } as const;
    expect(rowOf(compare([first, { ...first, value: 20.6 }]), "fermenter.volume").measured).toBe(20.6);
  });

  it("tells inside from outside at the end of the interval when the reading is all but exact", () => {
    const { high80 } = predicted["fermenter.volume"] ?? { high80: Number.NaN };
    const at = (value: number) =>
      rowOf(compare([{ quantity: "fermenter.volume", value, sd: 1e-9 }]), "fermenter.volume").expectation;
    expect(at(high80 - 1e-6)).toBe("inside");
    expect(at(high80 + 1e-6)).toBe("outside");
  });

  it("allows the reading its own uncertainty where the plan was decided, not predicted", () => {
    // 80 % of a normal distribution lie within 1.2816 standard deviations: 0.384 L for 0.3 L.
    const at = (off: number) =>
      rowOf(compare([{ quantity: "water.mash", value: valueOf(ledger, "water.mash") + off, sd: 0.3 }]), "water.mash");
    expect(at(0.38).expectation).toBe("inside");
    expect(at(-0.39).expectation).toBe("outside");
    expect(at(0).interval).toBeNull();
  });

  it("computes attenuation and alcohol from the two gravities", () => {
    const result = compare(readingsOf(ledger, { "fermenter.originalExtract": 12, "fermenter.finalExtract": 3 }));
    expectWithin(rowOf(result, "fermenter.attenuation").measured ?? 0, 0.75, 1e-12);
    // Balling by hand: real extract 4.6272, alcohol 7.3728 / (2.0665 − 0.010665 × 12) = 3.8033 % by mass,
    // × 1.0118 / 0.7907 = 4.867 % by volume. δ of attenuation: √((0.25/12)² + (3 × 0.25/144)²) = 0.0215.
    expectWithin(rowOf(result, "package.alcohol").measured ?? 0, 4.867, 0.002);
    expectWithin(rowOf(result, "fermenter.attenuation").measuredSd ?? 0, 0.0215, 0.0001);
  });

  it("leaves the lauter efficiency open where no first wort was read", () => {
    const without = readingsOf(ledger).filter(({ quantity }) => quantity !== "mash.firstWort");
    expect(rowOf(compare(without), "lauter.efficiency").measured).toBeNull();
  });

  it("never throws and never gives a number that is none, whatever is read (law)", () => {
    const ranges = { volume: 60, gravity: 35, temperature: 100, duration: 300 };
    const reading = fc.constantFrom(...MEASURABLE_QUANTITIES).chain((quantity) =>
      fc.record({
        quantity: fc.constant(quantity),
        value: fc.double({ min: 0, max: ranges[MEASURABLE[quantity].kind], noNaN: true }),
        sd: fc.constantFrom(0, 0.01, 0.3, 2),
      }),
    );
    const kettles = [ledger, ...OTHER_KETTLES.map(({ changes }) => brewed(changes))];
    fc.assert(
      fc.property(fc.constantFrom(...kettles), fc.array(reading, { maxLength: 11 }), (planned, readings) => {
        const result = compareLedger({ ledger: planned, intervals: predicted, readings });
        const numbers = [
          ...result.rows.flatMap((row) => [row.planned, row.measured, row.measuredSd, row.difference, row.reconciled]),
          ...result.extract.lines.flatMap((line) => [line.plannedKg, line.measuredKg, line.measuredSd]),
          ...result.suspects.flatMap((suspect) => [suspect.shouldBe, suspect.shouldBeSd, suspect.z]),
        ];
        for (const each of numbers) expect(each === null || Number.isFinite(each)).toBe(true);
        expect(new Set(result.suspects.map(({ quantity }) => quantity)).size).toBe(result.suspects.length);
      }),
      { numRuns: 200 },
    );
  });

  it("refuses a gravity above 35 °P, a negative volume and a negative uncertainty", () => {
    const gravity = { quantity: "kettle.preBoilGravity", value: 36, sd: 0.25 } as const;
    const volume = { quantity: "kettle.preBoil", value: -1, sd: 0.3 } as const;
    expect(() => compare([gravity])).toThrow("Gravity before the boil 36 °P is outside 0 to 35 °P");
    expect(() => compare([volume])).toThrow("Before the boil, hot -1 L is outside");
    expect(() => compare([{ ...volume, value: 1, sd: -1 }])).toThrow("uncertainty -1 L is outside");
    expect(() => compare([{ ...volume, value: Number.NaN }])).toThrow("NaN");
  });
});
