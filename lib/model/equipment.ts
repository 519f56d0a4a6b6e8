import { z } from "zod";
import { CORRELATION_RANGE, FIGURES, type Equipment, type Figure } from "@/lib/calc/ledger";
import type { Quantity } from "@/lib/calc/units";
import { dipStick, LONGEST_BASIS } from "./dip-stick";
import { EQUIPMENT_FIELDS } from "./equipment-fields";
import type { MeasuredField } from "./field";
import { counted, measuredBy, ranged, revisionNumber } from "./measured";
import { oneOf, recordId, written } from "./written";

/** A figure with its uncertainty, which cannot be wider than the range itself. */
function figure<U extends string>(field: MeasuredField<U>): z.ZodType<Figure<Quantity<U>>> {
  const { label, make, min, max } = field;
  const { unit } = make.range;
  return z.strictObject({
    value: measuredBy(field),
    sd: ranged(`${label}, uncertainty`, { min: 0, max: max - min, unit }),
    from: oneOf(`${label}, origin`, ["typical", "stated", "measured", "learned"]),
    count: counted(`${label}, number of trials`, { min: 0, max: 100000 }),
    basis: written(`${label}, measured by`, LONGEST_BASIS).exactOptional(),
  });
}

const yesOrNo = (label: string): z.ZodType<boolean> => z.boolean({ error: `${label} is yes or no` });

const kettle = z
  .strictObject({
    capacity: measuredBy(EQUIPMENT_FIELDS["kettle.capacity"]),
    headspace: measuredBy(EQUIPMENT_FIELDS["kettle.headspace"]),
    minimum: measuredBy(EQUIPMENT_FIELDS["kettle.minimum"]),
    openArea: measuredBy(EQUIPMENT_FIELDS["kettle.openArea"]),
    lid: yesOrNo("Lid while heating"),
    heatCapacity: measuredBy(EQUIPMENT_FIELDS["kettle.heatCapacity"]),
    ratedPower: measuredBy(EQUIPMENT_FIELDS["kettle.ratedPower"]),
    ratedVoltage: measuredBy(EQUIPMENT_FIELDS["kettle.ratedVoltage"]),
    supplyVoltage: measuredBy(EQUIPMENT_FIELDS["kettle.supplyVoltage"]),
    heatShare: figure(EQUIPMENT_FIELDS["kettle.heatShare"]),
    lossCoefficient: figure(EQUIPMENT_FIELDS["kettle.lossCoefficient"]),
    boilOff: figure(EQUIPMENT_FIELDS["kettle.boilOff"]),
    trub: figure(EQUIPMENT_FIELDS["kettle.trub"]),
    transfer: figure(EQUIPMENT_FIELDS["kettle.transfer"]),
    dipStick: dipStick.exactOptional(),
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
  capacity: measuredBy(EQUIPMENT_FIELDS["mash.capacity"]),
  grainLimit: measuredBy(EQUIPMENT_FIELDS["mash.grainLimit"]).nullable(),
  falseBottom: yesOrNo("False bottom"),
  heated: yesOrNo("Heated mash"),
  heatCapacity: measuredBy(EQUIPMENT_FIELDS["mash.heatCapacity"]),
  lossCoefficient: measuredBy(EQUIPMENT_FIELDS["mash.lossCoefficient"]),
  thickest: measuredBy(EQUIPMENT_FIELDS["mash.thickest"]),
});

const lauter = z.strictObject({
  method: oneOf("Sparge", ["none", "batch", "continuous", "pour-over"]),
  absorption: figure(EQUIPMENT_FIELDS["lauter.absorption"]),
  deadSpace: figure(EQUIPMENT_FIELDS["lauter.deadSpace"]),
  bypass: figure(EQUIPMENT_FIELDS["lauter.bypass"]),
  conversion: figure(EQUIPMENT_FIELDS["lauter.conversion"]),
  spargeHeater: measuredBy(EQUIPMENT_FIELDS["lauter.spargeHeater"]).nullable(),
});

const chiller = z.strictObject({
  kind: oneOf("Chiller", ["immersion", "counterflow", "ice bath", "none"]),
  conductance: figure(EQUIPMENT_FIELDS["chiller.conductance"]),
  coolantFlow: measuredBy(EQUIPMENT_FIELDS["chiller.coolantFlow"]),
  coolant: measuredBy(EQUIPMENT_FIELDS["chiller.coolant"]),
});

const fermenter = z
  .strictObject({
    capacity: measuredBy(EQUIPMENT_FIELDS["fermenter.capacity"]),
    headspace: measuredBy(EQUIPMENT_FIELDS["fermenter.headspace"]),
    left: figure(EQUIPMENT_FIELDS["fermenter.left"]),
  })
  .refine((f) => f.headspace < f.capacity, {
    path: ["headspace"],
    message: "Fermenter headspace leaves no room in the fermenter",
  });

const figureName = oneOf(
  "Figure of a correlation",
  FIGURES.map(({ name }) => name),
);

/** Which figures are off together: each pair once, and none with itself. */
const correlations = z
  .array(
    z.strictObject({
      one: figureName,
      other: figureName,
      coefficient: ranged("Correlation coefficient", CORRELATION_RANGE),
    }),
    { error: "The correlations of figures are not a list" },
  )
  .max((FIGURES.length * (FIGURES.length - 1)) / 2, "There are more correlations than pairs of figures")
  .refine((pairs) => new Set(pairs.map(({ one, other }) => [one, other].sort().join())).size === pairs.length, {
    message: "A correlation of two figures is there twice",
  })
  .refine((pairs) => pairs.every(({ one, other }) => one !== other), {
    message: "A correlation is of a figure with itself",
  });

/** One member's equipment, with ranges from a two-litre pot to a small brewery. */
export const equipmentInput: z.ZodType<Equipment> = z
  .strictObject({
    name: written("Name of the equipment", 80),
    kettle,
    mash: mashVessel,
    lauter,
    hopAbsorption: figure(EQUIPMENT_FIELDS.hopAbsorption),
    chiller,
    fermenter,
    usualBatch: measuredBy(EQUIPMENT_FIELDS.usualBatch),
    altitude: measuredBy(EQUIPMENT_FIELDS.altitude),
    correlations: correlations.exactOptional(),
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
