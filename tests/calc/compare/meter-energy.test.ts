import { describe, expect, it } from "vitest";
import { compareLedger, meterEnergy } from "@/lib/calc/compare";
import { intervals } from "@/lib/calc/ledger";
import { brewed, brewInput } from "../../support/brewed";

const read = (...values: readonly number[]) => values.map((value) => ({ value, sd: 0.05 }));

describe("meterEnergy", () => {
  it("is the last reading less the first, with the uncertainty of both (by hand)", () => {
    // 8048.7 − 8041.2 = 7.5; √(0.05² + 0.05²) = 0.0707.
    expect(meterEnergy(read(8041.2, 8045, 8048.7))).toEqual({
      ok: true,
      kWh: expect.closeTo(7.5, 9) as number,
      sd: expect.closeTo(0.0707, 4) as number,
    });
  });

  it.each([
    ["no reading", []],
    ["one reading", [8041.2]],
  ])("has no answer with %s", (_what, values) => {
    expect(meterEnergy(read(...values))).toEqual({ ok: false, reason: "fewer-than-two" });
  });

  it("sees a meter that runs back, and lets a digit of the display pass", () => {
    expect(meterEnergy(read(8041.2, 41.2, 8048.7))).toEqual({ ok: false, reason: "runs-back" });
    // Three times √2 · 0.05 is 0.212.
    expect(meterEnergy(read(8041.2, 8041, 8048.7)).ok).toBe(true);
    expect(meterEnergy(read(8041.2, 8041))).toMatchObject({ ok: true, kWh: 0 });
  });

  it("refuses what no meter shows", () => {
    expect(() => meterEnergy(read(-1, 5))).toThrow("meter reading -1 kWh is outside 0 to 1000000 kWh");
  });
});

describe("compareLedger with a meter", () => {
  const input = { ledger: brewed(), intervals: intervals(brewInput()), readings: [] };
  const planned = input.ledger.quantities["day.energy"] ?? NaN;
  const rowFor = (used: number) =>
    compareLedger({ ...input, meter: read(100, 100 + used) }).rows.find(({ quantity }) => quantity === "day.energy");

  it("sets the electricity of the day beside its plan", () => {
    expect(rowFor(planned)).toMatchObject({ station: "package", planned, derived: true, expectation: "inside" });
    expect(rowFor(planned)?.difference).toBeCloseTo(0, 9);
    expect(rowFor(3 * planned)).toMatchObject({ expectation: "outside", reconciled: null });
  });

  it("has no such row where nobody read a meter, and nothing measured where it runs back", () => {
    const rows = (meter: ReturnType<typeof read>) => compareLedger({ ...input, meter }).rows;
    expect(rows([]).some(({ quantity }) => quantity === "day.energy")).toBe(false);
    const [row] = rows(read(100, 50)).filter(({ quantity }) => quantity === "day.energy");
    expect(row).toMatchObject({ measured: null, expectation: null });
  });

  it("changes no balance and accuses no reading", () => {
    const { rows: _, ...without } = compareLedger(input);
    const { rows: __, ...with_ } = compareLedger({ ...input, meter: read(100, 100 + 5 * planned) });
    expect(with_).toEqual(without);
  });
});
