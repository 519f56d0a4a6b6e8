import { describe, expect, it } from "vitest";
import { compareLedger, type ExtractAccount, type ExtractLineId } from "@/lib/calc/compare";
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

const lineOf = (account: ExtractAccount, id: ExtractLineId): ExtractAccount["lines"][number] | undefined =>
  account.lines.find((line) => line.id === id);

describe("the account of the extract", () => {
  const noisy = readingsOf(ledger, {
    "kettle.preBoil": 26.1,
    "kettle.preBoilGravity": 13.9,
    "kettle.postBoil": 24.9,
    "fermenter.volume": 20.4,
    "fermenter.originalExtract": 15.2,
    "fermenter.finalExtract": 3.6,
  });

  it("adds up from the grist to the beer, planned and measured (law)", () => {
    const account = accountOf(noisy);
    expectToAddUp(account, (line) => line.plannedKg);
    expectToAddUp(account, (line) => line.measuredKg ?? Number.NaN);
  });

  it("begins with the grist as weighed out: 4.4, 0.5 and 0.25 kg of malt and 0.2 kg of sugar", () => {
    // By hand: 4.4 × 0.965 × 0.81 + 0.5 × 0.958 × 0.80 + 0.25 × 0.957 × 0.76 = 4.00429 kg, and 0.2 × 0.9995 kg.
    const account = accountOf([]);
    expectWithin(lineOf(account, "potential")?.plannedKg ?? 0, 4.00429, 1e-9);
    expectWithin(lineOf(account, "added")?.plannedKg ?? 0, 0.1999, 1e-9);
    expectWithin(account.weighedOutKg, 4.20419, 1e-9);
  });

  it("weighs the extract in the fermenter from volume, density and strength", () => {
    // 15 °P has SG 1.0611 (NBS Circular C440): 20 L × 1.0611 × 0.99820 kg/L × 0.15 = 3.1776 kg.
    const read = readingsOf(ledger, { "fermenter.volume": 20, "fermenter.originalExtract": 15 });
    const line = lineOf(accountOf(read), "fermenter");
    expectWithin(line?.measuredKg ?? 0, 3.1776, 0.0002);
    // A degree more makes 1/15 more extract and 0.0046/1.0611 more density (16 °P: 1.0657): √(0.0150² + 0.0177²) = 2.32 %.
    expectWithin(line?.measuredSd ?? 0, 0.0232 * 3.1776, 0.0003);
    expectWithin(line?.measuredShare ?? 0, 3.1776 / 4.20419, 0.0001);
  });

  it("takes kettle volumes as hot: the same litres hold about 4 % less extract than at 20 °C", () => {
    // Water at 99.8 °C weighs 0.9585 kg/L, at 20 °C 0.9982 kg/L (steam tables): 3.98 % less; wort expands nearly alike.
    const read = readingsOf(ledger, { "kettle.postBoil": 20, "fermenter.volume": 20 });
    const account = accountOf(read);
    const ratio = (lineOf(account, "endOfBoil")?.measuredKg ?? 0) / (lineOf(account, "fermenter")?.measuredKg ?? 1);
    expectWithin(ratio, 0.9602, 0.002);
  });

  it("leaves a line open where the readings do not reach, and keeps those that they do", () => {
    const account = accountOf(noisy.filter(({ quantity }) => quantity !== "kettle.postBoil"));
    const open = account.lines.filter((line) => line.measuredKg === null).map((line) => line.id);
    expect(open).toEqual(["boil", "endOfBoil", "left"]);
  });

  it("plans the fermenter's extract as brewhouse efficiency times all that was weighed out", () => {
    const account = accountOf([]);
    expectWithin(lineOf(account, "fermenter")?.plannedShare ?? 0, valueOf(ledger, "fermenter.efficiency"), 1e-12);
  });
});
