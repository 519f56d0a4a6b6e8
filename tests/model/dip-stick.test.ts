import { describe, expect, it } from "vitest";
import { equipmentInput } from "@/lib/model/equipment";
import { readEquipment } from "@/lib/ui/equipment/read-equipment";
import { draftOfEquipment } from "@/lib/ui/equipment/equipment-draft";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { sampleEquipment } from "../support/sample-recipe";

const sample = sampleEquipment();
const TABLE = {
  unit: "mm",
  marks: [
    { reading: 50, litres: 5, sd: 0.05 },
    { reading: 250, litres: 25, sd: 0.1 },
  ],
  basis: "commissioning trial of 29 Nov 2026, 2 readings",
};
const withTable = (dipStick: object): object => ({ ...sample, kettle: { ...sample.kettle, dipStick } });

function refusalOf(input: object): string {
  const read = equipmentInput.safeParse(input);
  return read.success ? "" : read.error.issues.map(({ message }) => message).join("; ");
}

describe("the dip-stick of a kettle", () => {
  it("may be absent, as in every profile written before there was one", () => {
    expect(equipmentInput.parse(sample).kettle).not.toHaveProperty("dipStick");
    expect(equipmentInput.parse(sample).kettle.boilOff).not.toHaveProperty("basis");
  });

  it("is kept with the profile, and by the form that does not show it", () => {
    const equipment = equipmentInput.parse(withTable(TABLE));
    expect(equipment.kettle.dipStick).toEqual(TABLE);
    const read = readEquipment(draftOfEquipment(equipment, DEFAULT_PREFERENCES), DEFAULT_PREFERENCES);
    expect(read.equipment?.kettle.dipStick).toEqual(TABLE);
  });

  it("is refused with a mark that falls, by its numbers", () => {
    const falling = [...TABLE.marks, { reading: 300, litres: 24, sd: 0.1 }];
    expect(refusalOf(withTable({ ...TABLE, marks: falling }))).toBe(
      "Mark 300 with 24 L does not rise above the one before, 250 with 25 L",
    );
  });

  it("is refused with one mark, and with a mark that is no number", () => {
    expect(refusalOf(withTable({ ...TABLE, marks: TABLE.marks.slice(1) }))).toBe(
      "A dip-stick needs two marks at least",
    );
    const odd = [{ reading: "deep", litres: 5, sd: 0 }, TABLE.marks[1]];
    expect(refusalOf(withTable({ ...TABLE, marks: odd }))).toContain("Mark of the dip-stick “deep” is not a number");
  });
});
