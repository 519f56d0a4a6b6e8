import type { Equipment } from "@/lib/calc/ledger";
import { equipmentInput } from "../equipment";
import { typicalEquipment, type EquipmentKind } from "../typical-equipment";

/** A hob warms the kitchen too; an element in the liquor hardly does. Between their typical shares, common practice, no source. */
const HOB_BELOW = 0.85;

/** The kind that a profile is of. It states its vessels; whether a bag hangs over a hob or an element, its heat tells. */
export function kettleKind({ mash, kettle }: Equipment): EquipmentKind {
  switch (mash.kind) {
    case "basket":
      return "electric with basket";
    case "tun":
      return "kettle and mash tun";
    case "bag":
      return kettle.heatShare.value < HOB_BELOW ? "pot on a hob" : "electric with bag";
  }
}

/**
 * What is typical of a kettle of this kind and size, against which kettles of several sizes are held; null where the answers
 * that it would be estimated from are odd.
 */
export function typicalOf(equipment: Equipment): Equipment | null {
  const { kettle, usualBatch, altitude, name } = equipment;
  const typical = typicalEquipment({
    ...{ name, usualBatch, altitude },
    kind: kettleKind(equipment),
    capacity: kettle.capacity,
    power: kettle.ratedPower,
    voltage: kettle.ratedVoltage,
  });
  const read = equipmentInput.safeParse(typical);
  return read.success ? read.data : null;
}
