import { describe as suite, expect, it } from "vitest";
import { describe } from "@/lib/calc/statistics";
import { numericalAccuracy } from "../../reference/nist-strd";
import { expectDigits } from "../../support/expect-digits";
import { expectWithin } from "../../support/expect-within";

suite("describe", () => {
  it("meets the certified mean and sd of NumAcc1, eight digits of which seven are the same (NIST StRD)", () => {
    expect(describe([10000001, 10000003, 10000002])).toMatchObject({ n: 3, mean: 10000002, sd: 1, median: 10000002 });
  });

  it.each([
    { name: "NumAcc3", constant: 1_000_000, digits: 9 },
    { name: "NumAcc4", constant: 10_000_000, digits: 8 },
  ])("meets the certified mean and sd of $name to what doubles keep of it (NIST StRD)", ({ constant, digits }) => {
    const found = describe(numericalAccuracy(constant));
    expectDigits(found.mean, constant + 0.2, 15);
    expectDigits(found.sd, 0.1, digits);
  });

  it("reads quartiles on straight lines between sorted values, by hand: 9, 1, 4, 2", () => {
    // Places 0.75, 1.5 and 2.25 of 0 to 3: 1 + 0.75, 2 + 0.5 · 2, 4 + 0.25 · 5; squares about 4 are 9 + 4 + 0 + 25 = 38.
    const found = describe([9, 1, 4, 2]);
    expect(found).toMatchObject({ n: 4, mean: 4, min: 1, lowerQuartile: 1.75, median: 3, upperQuartile: 5.25, max: 9 });
    expectWithin(found.sd, Math.sqrt(38 / 3), 1e-15);
  });

  it("finds no scatter in equal values", () => {
    expect(describe([5, 5])).toEqual({
      n: 2,
      mean: 5,
      sd: 0,
      min: 5,
      lowerQuartile: 5,
      median: 5,
      upperQuartile: 5,
      max: 5,
    });
  });

  it("refuses a single value, too many and what is not a number", () => {
    expect(() => describe([1])).toThrow("number of values 1 is outside 2 to 100000");
    expect(() => describe(Array.from({ length: 100_001 }, () => 1))).toThrow("number of values 100001 is outside");
    expect(() => describe([1, NaN])).toThrow("value NaN is outside -1e+50 to 1e+50");
    expect(() => describe([1, 2e50])).toThrow("value 2e+50 is outside");
  });
});
