import { describe, expect, it } from "vitest";
import { realExtract } from "@/lib/calc/alcohol";
import { carbonationAtEnd, co2FromExtract, primingWort, residualCo2, type PrimingWort } from "@/lib/calc/carbonation";
import { wortDensity } from "@/lib/calc/gravity";
import { celsius, degreesPlato, litres, volumesCo2 } from "@/lib/calc/units";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

const gas = (original: number, now: number, final: number): number =>
  co2FromExtract({
    originalPlato: degreesPlato(original),
    nowPlato: degreesPlato(now),
    finalPlato: degreesPlato(final),
  });

describe("co2FromExtract", () => {
  it("is 36.58 g from a litre of wort of 12 °P that ends at 3 °P (Balling, by hand)", () => {
    // Real extract 4.6272, alcohol 7.3728 / 1.93852 = 3.80331 %, gas 0.9565 × 3.80331 / 1.0405623 = 3.49606 g in 100 g;
    // a litre of wort weighs 1.04643 kg (NBS C440, 12 %).
    expectWithin(gas(12, 12, 3), 36.584, 0.003);
  });

  it("is 1.957 g for the last half degree (Balling, by hand)", () => {
    // At 3.5 °P: real extract 5.0368, alcohol 3.59202 %, gas 3.30900 g in 100 g.
    expectWithin(gas(12, 3.5, 3), 1.957, 0.0005);
  });

  it("closes the balance of extract: 2.0665 g of it for 0.9565 g of gas (Balling 1865)", () => {
    for (const [original, final] of [
      [8, 1],
      [12, 3],
      [20, 5],
      [30, 10],
    ] as const) {
      const kilograms = wortDensity({ plato: degreesPlato(original), celsius: celsius(20) });
      const gasIn100 = gas(original, original, final) / (10 * kilograms);
      const alcohol = gasIn100 / 0.9565;
      const beer = 100 - gasIn100 - 0.11 * alcohol;
      const left = realExtract({ originalPlato: degreesPlato(original), apparentPlato: degreesPlato(final) });
      expectWithin(2.0665 * alcohol + (left * beer) / 100, original, 1e-9);
    }
  });

  it("is some 2 % more than 0.4629 g from each gram of real extract (common practice, no source)", () => {
    // (12 − 4.6272) × 10 × 1.04643 × 0.4629 = 35.71 g/L.
    expectWithin(gas(12, 12, 3) / 35.71, 1.024, 0.001);
  });

  it("adds up over two steps and is nothing over none", () => {
    expectWithin(gas(14, 14, 6) + gas(14, 6, 2.5), gas(14, 14, 2.5), 1e-9);
    expect(gas(14, 4, 4)).toBe(0);
    expect(gas(0, 0, 0)).toBe(0);
  });

  it("refuses an extract that rises and a beer stronger than its wort", () => {
    expect(() => gas(12, 3, 3.1)).toThrow("final extract 3.1 °P is outside -2.6");
    expect(() => gas(12, 12.1, 3)).toThrow("apparent extract 12.1 °P");
    expect(() => gas(36, 10, 3)).toThrow("original extract 36 °P is outside 0 to 35 °P");
  });
});

describe("carbonationAtEnd", () => {
  const closedAt = (now: number): ReturnType<typeof carbonationAtEnd> =>
    carbonationAtEnd({
      originalPlato: degreesPlato(12),
      nowPlato: degreesPlato(now),
      finalPlato: degreesPlato(3),
      celsius: celsius(18),
    });

  it("is 1.912 volumes half a degree too early (by hand)", () => {
    // 0.91516 volumes left at 18 °C, 1.957 g/L / 1.96346 from the extract.
    const outcome = closedAt(3.5);
    expect(outcome).toMatchObject({ ok: true, fromExtract: gas(12, 3.5, 3) });
    if (outcome.ok) expectPrinted(outcome.volumes, "1.912");
  });

  it("is what open beer keeps when fermentation has ended", () => {
    expect(closedAt(3)).toEqual({ ok: true, volumes: residualCo2(celsius(18)), fromExtract: 0 });
  });

  it("says so where no container would hold it", () => {
    expect(closedAt(12)).toEqual({ ok: false, reason: "above-any-container", fromExtract: gas(12, 12, 3) });
    // (10 − 0.91516) × 1.96346 = 17.84 g/L is the limit.
    expect(closedAt(7.5).ok).toBe(gas(12, 7.5, 3) <= 17.837);
    expect(closedAt(7.4).ok).toBe(true);
    expect(closedAt(7.8).ok).toBe(false);
  });

  it("refuses beer that was hotter than any fermentation", () => {
    expect(() =>
      carbonationAtEnd({
        originalPlato: degreesPlato(12),
        nowPlato: degreesPlato(4),
        finalPlato: degreesPlato(3),
        celsius: celsius(50),
      }),
    ).toThrow("temperature 50 °C is outside -2 to 45 °C");
  });
});

describe("primingWort", () => {
  const beer = { litres: litres(20), targetVolumes: volumesCo2(2.5), celsius: celsius(18) };
  const saved = { wortPlato: degreesPlato(12), finalPlato: degreesPlato(3) };
  const volumeOf = (outcome: PrimingWort): number => (outcome.ok ? outcome.litres : Number.NaN);

  it("is 1.965 L of saved wort for 20 L (by hand)", () => {
    // 20 × (2.5 − 0.91516) / (36.584 / 1.96346 − 2.5) = 31.697 / 16.132.
    expectPrinted(volumeOf(primingWort({ ...beer, ...saved })), "1.965");
  });

  it("is 3.69 L of the same wort in full ferment at 8 °P, which brings its own gas (by hand)", () => {
    // Gas left in it 19.964 g/L, 10.168 volumes: 31.697 / (10.168 + 0.91516 − 2.5).
    expectPrinted(volumeOf(primingWort({ ...beer, ...saved, nowPlato: degreesPlato(8) })), "3.69");
  });

  it("carbonates beer and wort together to the target", () => {
    const added = volumeOf(primingWort({ ...beer, ...saved }));
    const held = 20 * residualCo2(celsius(18)) + (added * gas(12, 12, 3)) / (44.009 / 22.414);
    expectWithin(held, 2.5 * (20 + added), 1e-9);
  });

  it("is in proportion to the beer, and nothing for none or for beer that holds as much", () => {
    expectWithin(
      volumeOf(primingWort({ ...beer, ...saved, litres: litres(40) })),
      2 * volumeOf(primingWort({ ...beer, ...saved })),
      1e-9,
    );
    expect(primingWort({ ...beer, ...saved, litres: litres(0) })).toEqual({ ok: true, litres: 0 });
    expect(primingWort({ ...beer, ...saved, targetVolumes: volumesCo2(0.9) })).toEqual({ ok: true, litres: 0 });
  });

  it("says so where the wort cannot lift even itself", () => {
    // 1 °P to 0: alcohol 0.8192 / 2.055835 = 0.39848 %, gas 0.37953 g in 100 g of 1.0021 kg/L: 3.80 g/L, 1.94 volumes.
    const weak = primingWort({ ...beer, wortPlato: degreesPlato(1), finalPlato: degreesPlato(0) });
    expect(weak).toMatchObject({ ok: false, reason: "wort-too-weak" });
    if (!weak.ok) expectWithin(weak.fromWort, 3.803, 0.003);
  });

  it("says so where more wort would be needed than any cellar holds", () => {
    // 1.937 volumes of gas to spare 0.057 of 1.88: 100 000 L of beer would take 1.7 million litres.
    const vast = primingWort({
      ...beer,
      litres: litres(100_000),
      targetVolumes: volumesCo2(1.88),
      wortPlato: degreesPlato(1),
      finalPlato: degreesPlato(0),
    });
    expect(vast).toMatchObject({ ok: false, reason: "wort-too-weak" });
  });

  it("refuses a gusher, a wort that gains extract and too much beer", () => {
    expect(() => primingWort({ ...beer, ...saved, targetVolumes: volumesCo2(6.1) })).toThrow(
      "carbonation 6.1 volumes is outside 0 to 6 volumes",
    );
    expect(() => primingWort({ ...beer, ...saved, nowPlato: degreesPlato(2) })).toThrow("final extract 3 °P");
    expect(() => primingWort({ ...beer, ...saved, litres: 100_001 as never })).toThrow("volume 100001 L");
  });
});
