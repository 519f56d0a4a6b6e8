import { describe, expect, it } from "vitest";
import { equipmentInput } from "@/lib/model/equipment";
import { fieldErrors } from "@/lib/model/field-errors";
import { sampleEquipment } from "../support/sample-recipe";

type Sample = ReturnType<typeof sampleEquipment>;

function messagesFor(change: (equipment: Sample) => object): Readonly<Record<string, string>> {
  const outcome = equipmentInput.safeParse(change(sampleEquipment()));
  return outcome.success ? {} : fieldErrors(outcome.error);
}

const withKettle = (change: object) => (equipment: Sample) => ({
  ...equipment,
  kettle: { ...equipment.kettle, ...change },
});

describe("equipmentInput", () => {
  it("gives back good equipment unchanged", () => {
    expect(equipmentInput.parse(sampleEquipment())).toEqual(sampleEquipment());
  });

  it.each([
    ["a kettle of 0 L", { capacity: 0 }, "kettle.capacity", "Kettle volume 0 L is outside 0.5 to 2000 L"],
    ["a kettle of −5 L", { capacity: -5 }, "kettle.capacity", "Kettle volume -5 L is outside 0.5 to 2000 L"],
    [
      "a kettle without a volume",
      { capacity: "" },
      "kettle.capacity",
      "Kettle volume is empty; it takes a number from 0.5 to 2000 L",
    ],
    ["no power", { ratedPower: 0 }, "kettle.ratedPower", "Rated power 0 W is outside 50 to 200000 W"],
    [
      "a headspace above the rim",
      { headspace: 40 },
      "kettle.headspace",
      "Kettle headspace leaves no room in the kettle",
    ],
    [
      "an element that is never covered",
      { minimum: 37 },
      "kettle.minimum",
      "Least volume over the element does not fit under the headspace of the kettle",
    ],
    [
      "an element on twice its voltage",
      { ratedVoltage: 110 },
      "kettle.supplyVoltage",
      "Supply voltage is more than a quarter above the rated voltage: the element would burn out",
    ],
  ])("refuses %s", (_what, change, path, message) => {
    expect(messagesFor(withKettle(change))).toMatchObject({ [path]: message });
  });

  it("takes figures that are tied, each pair once and none with itself", () => {
    const tie = { one: "kettle.trub", other: "kettle.transfer", coefficient: -0.6 };
    const tied = { ...sampleEquipment(), correlations: [tie] };
    expect(equipmentInput.parse(tied)).toEqual(tied);
    const refusal = (...correlations: readonly object[]) =>
      messagesFor((equipment) => ({ ...equipment, correlations }));
    expect(refusal(tie, { ...tie, one: tie.other, other: tie.one })).toEqual({
      correlations: "A correlation of two figures is there twice",
    });
    expect(refusal({ ...tie, other: tie.one })).toEqual({ correlations: "A correlation is of a figure with itself" });
    expect(refusal({ ...tie, coefficient: 1.2 })).toEqual({
      "correlations.0.coefficient": "Correlation coefficient 1.2 is outside -1 to 1",
    });
  });

  it("refuses an uncertainty below zero", () => {
    const change = withKettle({ boilOff: { value: 3, sd: -1, from: "stated", count: 0 } });
    expect(messagesFor(change)).toEqual({
      "kettle.boilOff.sd": "Boil-off, uncertainty -1 kg/h is outside 0 to 1000 kg/h",
    });
  });

  it("refuses a basket larger than its kettle and allows a tun that is", () => {
    const mash = (equipment: Sample, kind: string) => ({
      ...equipment,
      mash: { ...equipment.mash, capacity: 60, kind },
    });
    expect(messagesFor((equipment) => mash(equipment, "basket"))).toEqual({
      "mash.capacity": "A basket or bag in the kettle cannot hold more than the kettle",
    });
    expect(messagesFor((equipment) => mash(equipment, "tun"))).toEqual({});
  });

  it("refuses a batch larger than the fermenter", () => {
    expect(messagesFor((equipment) => ({ ...equipment, usualBatch: 31 }))).toEqual({
      usualBatch: "Usual batch is larger than the fermenter",
    });
  });
});
