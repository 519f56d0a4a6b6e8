import { describe, expect, it } from "vitest";
import { specificGravityToPlato } from "@/lib/calc/gravity";
import { specificGravity } from "@/lib/calc/units";
import type { Preferences } from "@/lib/model/preferences";
import { emptyDraft, readDraft, type MeasuringPoint, type ReadingDraft } from "@/lib/ui/brew/reading-draft";

const METRIC: Preferences = { units: "metric", gravity: "plato", colour: "ebc", theme: "auto" };
const US: Preferences = { units: "us", gravity: "sg", colour: "srm", theme: "auto" };

const VOLUME: MeasuringPoint = {
  quantity: "kettle.preBoil",
  label: "Before the boil, hot",
  dimension: "volume",
  expected: { value: 27, interval: { low80: 26, high80: 28 } },
  usualSd: 0.3,
  range: { min: 0, max: 5000 },
  instruments: ["sight glass"],
  volume: null,
};
const ORIGINAL: MeasuringPoint = {
  quantity: "fermenter.originalExtract",
  label: "Original extract",
  dimension: "extract",
  expected: { value: 12, interval: { low80: 11.5, high80: 12.5 } },
  usualSd: 0.25,
  range: { min: 0, max: 35 },
  instruments: ["hydrometer", "refractometer"],
  volume: null,
};

function read(point: MeasuringPoint, typed: Partial<ReadingDraft>, preferences = METRIC): ReturnType<typeof readDraft> {
  return readDraft({ ...emptyDraft(point, preferences), ...typed }, point, preferences);
}

function value(point: MeasuringPoint, typed: Partial<ReadingDraft>, preferences = METRIC): number {
  const draft = read(point, typed, preferences);
  if (!draft.ok) throw new Error(Object.values(draft.errors).join("; "));
  return draft.reading.value;
}

describe("readDraft", () => {
  it("reads a volume in the person's unit, and in another where it is written", () => {
    // 1 US gal = 3.785411784 L (NIST SP 811, appendix B.8)
    expect(value(VOLUME, { amount: "7" }, US)).toBeCloseTo(7 * 3.785411784, 9);
    expect(value(VOLUME, { amount: "27,5 L" }, US)).toBe(27.5);
  });

  it("keeps what was typed with the units that stood beside it", () => {
    expect(read(VOLUME, { amount: "7" }, US)).toMatchObject({ reading: { entered: "7 gal" } });
    const gravity = { amount: "1.048", sample: "86" };
    expect(read(ORIGINAL, gravity, US)).toMatchObject({ reading: { entered: "1.048 SG at 86 °F" } });
  });

  it("takes a hydrometer at 20 °C for what it shows", () => {
    expect(value(ORIGINAL, { amount: "12", sample: "20" })).toBeCloseTo(12, 2);
  });

  it("reads beer lighter than water: 0.996 SG is −1.04 °P (ASBC cubic, by hand), and says where that ends", () => {
    const final: MeasuringPoint = { ...ORIGINAL, quantity: "fermenter.finalExtract", range: { min: -5, max: 35 } };
    expect(value(final, { amount: "0.996", sample: "68" }, US)).toBeCloseTo(-1.04, 1);
    expect(read(final, { amount: "0.97", sample: "68" }, US)).toMatchObject({
      ok: false,
      errors: { amount: expect.stringContaining("0.981") as unknown },
    });
  });

  it("corrects a hydrometer in a warm sample upwards, by what water expands", () => {
    // Water is 0.99821 kg/L at 20 °C and 0.99565 at 30 °C (Kell 1975): 1.050 there is near 1.0525 at 20 °C; glass takes 0.0003.
    const corrected = value(ORIGINAL, { amount: "1.050 SG", sample: "30" });
    expect(corrected).toBeGreaterThan(specificGravityToPlato(specificGravity(1.0522)));
    expect(corrected).toBeLessThan(specificGravityToPlato(specificGravity(1.0528)));
  });

  it("refuses a hydrometer in a hot sample and says what to do", () => {
    const draft = read(ORIGINAL, { amount: "12", sample: "70" });
    expect(draft).toMatchObject({
      ok: false,
      errors: { sample: expect.stringContaining("cool the sample") as unknown },
    });
  });

  it("divides a refractometer reading of wort by 1.04", () => {
    // common practice, no source: 12.48 °Bx / 1.04 = 12 °P
    expect(value(ORIGINAL, { amount: "12.48", instrument: "refractometer" })).toBeCloseTo(12, 9);
  });

  it.each([
    ["", "empty"],
    ["abc", "not a number"],
    ["-3 L", "outside"],
    ["6000 L", "outside"],
    ["12 kg", "unit"],
  ])("refuses “%s” with the name of the field", (amount, why) => {
    const draft = read(VOLUME, { amount });
    expect(draft.ok).toBe(false);
    if (!draft.ok) expect(draft.errors.amount).toMatch(new RegExp(`^Before the boil, hot.*${why}`));
  });

  it("refuses an uncertainty that is no number", () => {
    expect(read(VOLUME, { amount: "27", sd: "about 1" })).toMatchObject({ ok: false });
  });
});

describe("emptyDraft", () => {
  it.each([
    ["metric", METRIC, "0.3"],
    ["US", US, "0.079"],
  ])("offers the usual uncertainty in %s units", (_, preferences, text) => {
    // 0.3 L / 3.785411784 = 0.0793 gal
    expect(emptyDraft(VOLUME, preferences).sd).toBe(text);
  });

  it("gives back the uncertainty that it offers, on a scale with a bend", () => {
    const draft = read(ORIGINAL, { amount: "1.048", sample: "68" }, US);
    // Two digits are shown, so half a unit of the second: 0.00005 of 0.0010 SG, 5 %.
    if (draft.ok) expect(draft.reading.sd / 0.25).toBeCloseTo(1, 1);
    expect(draft.ok).toBe(true);
  });
});
