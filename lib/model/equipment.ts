import { z } from "zod";
import type { Equipment, Figure } from "@/lib/calc/ledger";
import {
  celsius,
  fraction,
  joulesPerKelvin,
  kilograms,
  kilogramsPerHour,
  litres,
  litresPerKilogram,
  litresPerMinute,
  metres,
  squareMetres,
  volts,
  watts,
  wattsPerKelvin,
  type Quantity,
  type QuantityMaker,
} from "@/lib/calc/units";
import { counted, measured, ranged, revisionNumber } from "./measured";
import { oneOf, recordId, written } from "./written";

type Bounds = { readonly min: number; readonly max: number };

/** A figure with its uncertainty, which cannot be wider than the range itself. */
function figure<U extends string>(
  label: string,
  make: QuantityMaker<U>,
  bounds: Bounds,
): z.ZodType<Figure<Quantity<U>>> {
  const { unit } = make.range;
  return z.strictObject({
    value: measured(label, make, bounds),
    sd: ranged(`${label}, uncertainty`, { min: 0, max: bounds.max - bounds.min, unit }),
    from: oneOf(`${label}, origin`, ["typical", "stated", "measured", "learned"]),
    count: counted(`${label}, number of trials`, { min: 0, max: 100000 }),
  });
}

const yesOrNo = (label: string): z.ZodType<boolean> => z.boolean({ error: `${label} is yes or no` });

const kettle = z
  .strictObject({
    capacity: measured("Kettle volume", litres, { min: 0.5, max: 2000 }),
    headspace: measured("Kettle headspace", litres, { min: 0, max: 1000 }),
    minimum: measured("Least volume over the element", litres, { min: 0, max: 1000 }),
    openArea: measured("Open surface of the kettle", squareMetres, { min: 0.001, max: 10 }),
    lid: yesOrNo("Lid while heating"),
    heatCapacity: measured("Heat capacity of the kettle", joulesPerKelvin, { min: 0, max: 5e6 }),
    ratedPower: measured("Rated power", watts, { min: 50, max: 200000 }),
    ratedVoltage: measured("Rated voltage", volts, { min: 12, max: 1000 }),
    supplyVoltage: measured("Supply voltage", volts, { min: 12, max: 1000 }),
    heatShare: figure("Share of the power that reaches the liquid", fraction, { min: 0.05, max: 1 }),
    lossCoefficient: figure("Heat loss of the kettle", wattsPerKelvin, { min: 0, max: 5000 }),
    boilOff: figure("Boil-off", kilogramsPerHour, { min: 0, max: 1000 }),
    trub: figure("Wort left with the trub", litres, { min: 0, max: 500 }),
    transfer: figure("Wort left in chiller and hoses", litres, { min: 0, max: 200 }),
  })
  .refine((k) => k.headspace < k.capacity, {
    path: ["headspace"],
    message: "Kettle headspace leaves no room in the kettle",
  })
  .refine((k) => k.minimum < k.capacity - k.headspace, {
    path: ["minimum"],
    message: "Least volume over the element does not fit under the headspace of the kettle",
  })
  .refine((k) => k.trub.value + k.transfer.value < k.capacity, {
    path: ["trub", "value"],
    message: "Wort left behind is as much as the kettle holds",
  })
  .refine((k) => k.supplyVoltage <= 1.25 * k.ratedVoltage, {
    path: ["supplyVoltage"],
    message: "Supply voltage is more than a quarter above the rated voltage: the element would burn out",
  });

const mashVessel = z.strictObject({
  kind: oneOf("Mash vessel", ["basket", "bag", "tun"]),
  capacity: measured("Mash vessel volume", litres, { min: 0.5, max: 2000 }),
  grainLimit: measured("Largest grist of the basket", kilograms, { min: 0.1, max: 1000 }).nullable(),
  falseBottom: yesOrNo("False bottom"),
  heated: yesOrNo("Heated mash"),
  heatCapacity: measured("Heat capacity of the mash vessel", joulesPerKelvin, { min: 0, max: 5e6 }),
  lossCoefficient: measured("Heat loss of the mash vessel", wattsPerKelvin, { min: 0, max: 5000 }),
  thickest: measured("Thickest mash", litresPerKilogram, { min: 1.5, max: 6 }),
});

const lauter = z.strictObject({
  method: oneOf("Sparge", ["none", "batch", "continuous", "pour-over"]),
  absorption: figure("Wort held by the grain", litresPerKilogram, { min: 0.1, max: 3 }),
  deadSpace: figure("Dead space under the grain", litres, { min: 0, max: 200 }),
  bypass: figure("Sparge water that runs past the grain", fraction, { min: 0, max: 0.9 }),
  conversion: figure("Conversion", fraction, { min: 0.3, max: 1 }),
  spargeHeater: measured("Power of the sparge-water heater", watts, { min: 50, max: 100000 }).nullable(),
});

const chiller = z.strictObject({
  kind: oneOf("Chiller", ["immersion", "counterflow", "ice bath", "none"]),
  conductance: figure("Heat transfer of the chiller", wattsPerKelvin, { min: 0, max: 20000 }),
  coolantFlow: measured("Coolant flow", litresPerMinute, { min: 0, max: 500 }),
  coolant: measured("Coolant temperature", celsius, { min: -20, max: 40 }),
});

const fermenter = z
  .strictObject({
    capacity: measured("Fermenter volume", litres, { min: 0.5, max: 5000 }),
    headspace: measured("Fermenter headspace", litres, { min: 0, max: 2000 }),
    left: figure("Beer left with the yeast", litres, { min: 0, max: 500 }),
  })
  .refine((f) => f.headspace < f.capacity, {
    path: ["headspace"],
    message: "Fermenter headspace leaves no room in the fermenter",
  });

/** One member's equipment, with ranges from a two-litre pot to a small brewery. */
export const equipmentInput: z.ZodType<Equipment> = z
  .strictObject({
    name: written("Name of the equipment", 80),
    kettle,
    mash: mashVessel,
    lauter,
    hopAbsorption: figure("Wort held by the hops", litresPerKilogram, { min: 0, max: 20 }),
    chiller,
    fermenter,
    usualBatch: measured("Usual batch", litres, { min: 0.3, max: 2000 }),
    altitude: measured("Altitude", metres),
  })
  .refine((e) => e.usualBatch <= e.fermenter.capacity, {
    path: ["usualBatch"],
    message: "Usual batch is larger than the fermenter",
  })
  .refine((e) => e.mash.kind === "tun" || e.mash.capacity <= e.kettle.capacity, {
    path: ["mash", "capacity"],
    message: "A basket or bag in the kettle cannot hold more than the kettle",
  });

export const newEquipment = z.strictObject({ equipment: equipmentInput });
export type NewEquipment = z.output<typeof newEquipment>;

export const equipmentChange = z.strictObject({ id: recordId, baseRev: revisionNumber, equipment: equipmentInput });
export type EquipmentChange = z.output<typeof equipmentChange>;

/** One kettle of a space with whose it is. */
export interface EquipmentProfile {
  readonly id: string;
  readonly ownerId: string;
  readonly ownerName: string;
  readonly rev: number;
  readonly equipment: Equipment;
  /** Whether the reader may change it. */
  readonly mayWrite: boolean;
}
