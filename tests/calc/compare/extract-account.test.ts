import { describe, expect, it } from "vitest";
import {
  compareLedger,
  type ComparedReading,
  type ExtractAccount,
  type ExtractLineId,
  type MeasurableQuantity,
} from "@/lib/calc/compare";
import { intervals } from "@/lib/calc/ledger";
import { brewed, brewInput, valueOf } from "../../support/brewed";
import { expectWithin } from "../../support/expect-within";
import { readingsOf } from "../../support/readings-of";

const ledger = brewed();
const predicted = intervals(brewInput());

const accountOf = (readings: ReturnType<typeof readingsOf>): ExtractAccount =>
  compareLedger({ ledger, intervals: predicted, readings }).extract;

/** Runs down the lines as a reader would: what is held, plus gains, less losses, is what the next line holds. */
function expectToAddUp({ lines }: ExtractAccount, of: (line: ExtractAccount["lines"][number]) => number): void {
  let held = 0;
  for (const [i, line] of lines.entries()) {
    if (i === 0) held = of(line);
    else if (line.effect === "holds") expectWithin(held, of(line), 1e-9);
    else held += line.effect === "gains" ? of(line) : -of(line);
  }
}

const only = (readings: readonly ComparedReading[], ...kept: readonly MeasurableQuantity[]): ComparedReading[] =>
  readings.filter(({ quantity }) => kept.includes(quantity));

function lineOf(account: ExtractAccount, id: ExtractLineId): ExtractAccount["lines"][number] {
  const line = account.lines.find((each) => each.id === id);
  if (line === undefined) throw new Error(`no line ${id}`);
  return line;
}

describe("the account of the extract", () => {
  const noisy = readingsOf(ledger, {
    "kettle.preBoil": 26.1,
    "kettle.preBoilGravity": 13.9,
    "kettle.postBoil": 24.9,
    "fermenter.volume": 20.4,
    "fermenter.originalExtract": 15.2,
    "fermenter.finalExtract": 3.6,
  });

  it("adds up from the grist to the beer, planned and by the readings (law)", () => {
    const account = accountOf(noisy);
    expectToAddUp(account, (line) => line.plannedKg);
    expectToAddUp(account, (line) => line.kg);
  });

  it("begins with the grist as weighed out: 4.4, 0.5 and 0.25 kg of malt and 0.2 kg of sugar", () => {
    // By hand: 4.4 × 0.965 × 0.81 + 0.5 × 0.958 × 0.80 + 0.25 × 0.957 × 0.76 = 4.00429 kg, and 0.2 × 0.9995 kg.
    const account = accountOf([]);
    expectWithin(lineOf(account, "potential").plannedKg, 4.00429, 1e-9);
    expectWithin(lineOf(account, "added").plannedKg, 0.1999, 1e-9);
    expectWithin(account.weighedOutKg, 4.20419, 1e-9);
  });

  it("weighs the extract in the fermenter from volume, density and strength where the plan says nothing", () => {
    // 15 °P has SG 1.0611 (NBS Circular C440): 20 L × 1.0611 × 0.99820 kg/L × 0.15 = 3.1776 kg.
    const read = only(
      readingsOf(ledger, { "fermenter.volume": 20, "fermenter.originalExtract": 15 }),
      "fermenter.volume",
      "fermenter.originalExtract",
    );
    const line = lineOf(compareLedger({ ledger, intervals: {}, readings: read }).extract, "fermenter");
    expectWithin(line.kg, 3.1776, 0.0002);
    // A degree more makes 1/15 more extract and 0.0046/1.0611 more density (16 °P: 1.0657): √(0.0150² + 0.0177²) = 2.32 %.
    expectWithin(line.sd ?? 0, 0.0232 * 3.1776, 0.0003);
    expectWithin(line.share, 3.1776 / 4.20419, 0.0001);
    expect(line.restsOn).toBe("readings");
  });

  it("takes kettle volumes as hot: the same litres hold about 4 % less extract than at 20 °C", () => {
    // Water at 99.8 °C weighs 0.9585 kg/L, at 20 °C 0.9982 kg/L (steam tables): 3.98 % less; wort expands nearly alike.
    const read = readingsOf(ledger, { "kettle.postBoil": 22, "fermenter.volume": 22 });
    const accountWith = (id: "kettle.postBoil" | "fermenter.volume") =>
      compareLedger({ ledger, intervals: {}, readings: only(read, id, "fermenter.originalExtract") }).extract;
    const hot = lineOf(accountWith("kettle.postBoil"), "endOfBoil").kg;
    expectWithin(hot / lineOf(accountWith("fermenter.volume"), "fermenter").kg, 0.9602, 0.002);
  });

  it("says of each line whether it rests on readings, on the plan or on weights", () => {
    const bases = (account: ExtractAccount) =>
      Object.fromEntries(account.lines.map(({ id, restsOn }) => [id, restsOn]));
    expect(bases(accountOf([]))).toEqual({
      potential: "weights",
      undissolved: "plan",
      grain: "plan",
      beforeBoil: "plan",
      added: "weights",
      endOfBoil: "plan",
      left: "plan",
      fermenter: "plan",
      fermented: "plan",
      residual: "plan",
    });
    const all = bases(accountOf(readingsOf(ledger)));
    expect([all.potential, all.beforeBoil, all.fermenter]).toEqual(["weights", "readings", "readings"]);
    // The first wort alone says how much dissolved, and next to nothing of what the trub kept.
    const firstWort = bases(accountOf(readingsOf(ledger).filter(({ quantity }) => quantity === "mash.firstWort")));
    expect(firstWort.left).toBe("plan");
    expect(firstWort.undissolved).not.toBe("plan");
  });

  it("leaves a line open where the plan says nothing and the readings do not reach", () => {
    const read = readingsOf(ledger).filter(({ quantity }) => quantity.startsWith("fermenter."));
    const { extract } = compareLedger({ ledger, intervals: {}, readings: read });
    expect(lineOf(extract, "fermenter").sd).not.toBeNull();
    expect([lineOf(extract, "grain").sd, lineOf(extract, "grain").measuredKg]).toEqual([null, null]);
  });

  it("plans the fermenter's extract as brewhouse efficiency times all that was weighed out", () => {
    const account = accountOf([]);
    expectWithin(lineOf(account, "fermenter").plannedShare, valueOf(ledger, "fermenter.efficiency"), 1e-12);
  });
});
