import { describe, expect, it } from "vitest";
import { litres, metres, volts, watts } from "@/lib/calc/units";
import { brew } from "@/lib/calc/ledger";
import { equipmentInput } from "@/lib/model/equipment";
import { equipmentAnswers } from "@/lib/model/equipment-answers";
import { starterRecipe } from "@/lib/model/starter-recipe";
import { EQUIPMENT_KINDS, typicalEquipment, type EquipmentKind } from "@/lib/model/typical-equipment";

const SIZES = [
  { capacity: 10, power: 1800, usualBatch: 5, altitude: 0 },
  { capacity: 35, power: 2500, usualBatch: 21, altitude: 50 },
  { capacity: 100, power: 8000, usualBatch: 60, altitude: 1600 },
] as const;

const CASES = EQUIPMENT_KINDS.flatMap((kind) => SIZES.map((size) => ({ kind, ...size })));

const profile = (kind: EquipmentKind, size: (typeof SIZES)[number]) =>
  typicalEquipment({
    name: "Estimated",
    kind,
    capacity: litres(size.capacity),
    power: watts(size.power),
    voltage: volts(230),
    usualBatch: litres(size.usualBatch),
    altitude: metres(size.altitude),
  });

describe("typicalEquipment", () => {
  it.each(CASES)("makes a profile that the schema takes: $kind, $capacity L", ({ kind, ...size }) => {
    const equipment = profile(kind, size);
    expect(equipmentInput.parse(equipment)).toEqual(equipment);
  });

  it.each(CASES)("makes a kettle that brews an ordinary ale: $kind, $capacity L", ({ kind, ...size }) => {
    const equipment = profile(kind, size);
    const { recipe, writtenOn } = starterRecipe(equipment);
    expect(brew({ recipe, equipment, ambient: writtenOn.ambient }).ok).toBe(true);
  });

  it.each(CASES)("marks every figure as typical: $kind, $capacity L", ({ kind, ...size }) => {
    const origins = JSON.stringify(profile(kind, size)).match(/"from":"\w+"/g) ?? [];
    expect(new Set(origins)).toEqual(new Set(['"from":"typical"']));
  });

  it("loses more heat from a larger kettle, and less for each litre", () => {
    const [small, , large] = SIZES.map((size) => profile("electric with bag", size).kettle);
    const loss = (kettle: typeof small): number => kettle?.lossCoefficient.value ?? 0;
    expect(loss(large)).toBeGreaterThan(loss(small));
    expect(loss(large) / 100).toBeLessThan(loss(small) / 10);
  });
});

describe("equipmentAnswers", () => {
  it("refuses a batch that the kettle does not hold", () => {
    const answers = {
      name: "Pot",
      kind: "pot on a hob",
      capacity: 10,
      power: 2000,
      voltage: 230,
      usualBatch: 20,
      altitude: 0,
    };
    const outcome = equipmentAnswers.safeParse(answers);
    expect(outcome.error?.issues.map(({ message }) => message)).toEqual(["Usual batch is more than the kettle holds"]);
  });
});
