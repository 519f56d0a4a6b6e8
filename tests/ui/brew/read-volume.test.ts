import { describe, expect, it } from "vitest";
import { litres } from "@/lib/calc/units";
import type { Preferences } from "@/lib/model/preferences";
import { readVolume, type VolumeReading } from "@/lib/ui/brew/read-volume";

const METRIC: Preferences = { units: "metric", gravity: "plato", colour: "ebc", theme: "auto" };
const COLD: VolumeReading = { referenceC: 20, plato: 0, dipStick: null };
const STICK: VolumeReading = {
  ...COLD,
  dipStick: {
    unit: "mm",
    marks: [
      { reading: 50, litres: litres(5), sd: 0.1 },
      { reading: 250, litres: litres(25), sd: 0.1 },
    ],
  },
};

function read(amount: string, sample: string, volume: VolumeReading, isStick = false) {
  return readVolume({
    label: "Before the boil",
    amount,
    sample,
    isStick,
    preferences: METRIC,
    range: { min: 0, max: 5000 },
    volume,
  });
}

function litresOf(outcome: ReturnType<typeof read>): number {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.litres;
}

describe("readVolume", () => {
  it("counts hot water at 20 °C by the densities of water", () => {
    // 0.9584 kg/L at 100 °C and 0.9982 at 20 °C: CRC Handbook of Chemistry and Physics, properties of water.
    expect(litresOf(read("30", "100", COLD))).toBeCloseTo((30 * 0.9584) / 0.9982, 2);
  });

  it("counts a colder reading at the boil, for which the ledger states it", () => {
    // 0.9749 kg/L at 75 °C: the same table.
    const atBoil = { ...COLD, referenceC: 100 };
    expect(litresOf(read("30", "75", atBoil))).toBeCloseTo((30 * 0.9749) / 0.9584, 2);
  });

  it("takes a reading at the reference temperature as it is, also where wort boils above 100 °C", () => {
    expect(litresOf(read("30", "100.4", { ...COLD, referenceC: 100.4 }))).toBeCloseTo(30, 9);
    const outcome = read("30", "100.4", { ...COLD, referenceC: 100.4 });
    expect(outcome.ok && outcome.correction).toBeNull();
  });

  it("reads a stick off its table, with the table's uncertainty", () => {
    // Half way between two marks of a straight vessel: half way between their litres.
    const outcome = read("150 mm", "20", STICK, true);
    expect(litresOf(outcome)).toBeCloseTo(15, 9);
    expect(outcome.ok && outcome.stickSd).toBeCloseTo(0.1, 9);
  });

  it.each([
    ["300", "20", "Before the boil 300 mm is outside the stick’s table, 50 to 250 mm"],
    ["deep", "20", "Before the boil “deep” is not a number; the stick is read in mm"],
    ["", "20", "Before the boil is empty; the stick is read in mm"],
  ])("refuses a stick at “%s” with the field, the value and the range", (amount, sample, message) => {
    expect(read(amount, sample, STICK, true)).toEqual({ ok: false, field: "amount", message });
  });

  it("refuses a temperature that no wort has", () => {
    expect(read("30", "140", COLD)).toMatchObject({ ok: false, field: "sample" });
  });
});
