import type { Equipment, Figure, FigureOrigin } from "@/lib/calc/ledger";
import { EQUIPMENT_FIELDS, type EquipmentField } from "@/lib/model/equipment-fields";
import type { MeasuredField } from "@/lib/model/field";
import type { Preferences } from "@/lib/model/preferences";
import { EMPTY, stored, word, type Entry } from "../recipe/entry";
import type { ChoiceName } from "./figure-groups";

/** The figures that have an uncertainty and an origin. */
export const FIGURE_NAMES = [
  "kettle.heatShare",
  "kettle.lossCoefficient",
  "kettle.boilOff",
  "kettle.trub",
  "kettle.transfer",
  "lauter.absorption",
  "lauter.deadSpace",
  "lauter.bypass",
  "lauter.conversion",
  "hopAbsorption",
  "chiller.conductance",
  "fermenter.left",
] as const satisfies readonly EquipmentField[];
export type FigureName = (typeof FIGURE_NAMES)[number];

export interface FigureEntries {
  readonly value: Entry;
  readonly sd: Entry;
  readonly from: FigureOrigin;
  readonly count: Entry;
  /** What it was measured by; undefined for a figure that somebody typed. */
  readonly basis: string | undefined;
}

/** An equipment profile as it is being written. */
export interface EquipmentDraft {
  readonly name: string;
  readonly numbers: Readonly<Record<Exclude<EquipmentField, FigureName>, Entry>>;
  readonly figures: Readonly<Record<FigureName, FigureEntries>>;
  readonly choices: Readonly<Record<ChoiceName, string>>;
  /** As it was opened: what is not written here goes along. */
  readonly opened: Equipment;
}

/** The field of an uncertainty: in the unit of its figure, from nothing to the whole range. */
export function uncertaintyField(name: FigureName): MeasuredField {
  const field = EQUIPMENT_FIELDS[name];
  return { ...field, label: `${field.label}, uncertainty`, min: 0, max: field.max - field.min };
}

export function isFigure(name: EquipmentField): name is FigureName {
  return FIGURE_NAMES.some((figure) => figure === name);
}

/** Opens a profile for writing, in the units of one person. */
export function draftOfEquipment(equipment: Equipment, preferences: Preferences): EquipmentDraft {
  const { kettle, mash, lauter, chiller } = equipment;
  return {
    name: equipment.name,
    numbers: numbersOf(equipment, preferences),
    figures: figuresOf(equipment, preferences),
    choices: {
      "kettle.lid": yesNo(kettle.lid),
      "mash.kind": mash.kind,
      "mash.falseBottom": yesNo(mash.falseBottom),
      "mash.heated": yesNo(mash.heated),
      "lauter.method": lauter.method,
      "chiller.kind": chiller.kind,
    },
    opened: equipment,
  };
}

function numbersOf(equipment: Equipment, preferences: Preferences): EquipmentDraft["numbers"] {
  const { kettle, mash, lauter, chiller, fermenter } = equipment;
  const of = (name: EquipmentField, value: number | null): Entry =>
    value === null ? EMPTY : stored({ field: EQUIPMENT_FIELDS[name], value, preferences });
  return {
    "kettle.capacity": of("kettle.capacity", kettle.capacity),
    "kettle.headspace": of("kettle.headspace", kettle.headspace),
    "kettle.minimum": of("kettle.minimum", kettle.minimum),
    "kettle.openArea": of("kettle.openArea", kettle.openArea),
    "kettle.heatCapacity": of("kettle.heatCapacity", kettle.heatCapacity),
    "kettle.ratedPower": of("kettle.ratedPower", kettle.ratedPower),
    "kettle.ratedVoltage": of("kettle.ratedVoltage", kettle.ratedVoltage),
    "kettle.supplyVoltage": of("kettle.supplyVoltage", kettle.supplyVoltage),
    "mash.capacity": of("mash.capacity", mash.capacity),
    "mash.grainLimit": of("mash.grainLimit", mash.grainLimit),
    "mash.heatCapacity": of("mash.heatCapacity", mash.heatCapacity),
    "mash.lossCoefficient": of("mash.lossCoefficient", mash.lossCoefficient),
    "mash.thickest": of("mash.thickest", mash.thickest),
    "lauter.spargeHeater": of("lauter.spargeHeater", lauter.spargeHeater),
    "chiller.coolantFlow": of("chiller.coolantFlow", chiller.coolantFlow),
    "chiller.coolant": of("chiller.coolant", chiller.coolant),
    "fermenter.capacity": of("fermenter.capacity", fermenter.capacity),
    "fermenter.headspace": of("fermenter.headspace", fermenter.headspace),
    usualBatch: of("usualBatch", equipment.usualBatch),
    altitude: of("altitude", equipment.altitude),
  };
}

function figuresOf(equipment: Equipment, preferences: Preferences): EquipmentDraft["figures"] {
  const { kettle, lauter, chiller, fermenter } = equipment;
  const of = (name: FigureName, figure: Figure<number>): FigureEntries => ({
    value: stored({ field: EQUIPMENT_FIELDS[name], value: figure.value, preferences }),
    sd: stored({ field: uncertaintyField(name), value: figure.sd, preferences }),
    from: figure.from,
    count: word(String(figure.count)),
    basis: figure.basis,
  });
  return {
    "kettle.heatShare": of("kettle.heatShare", kettle.heatShare),
    "kettle.lossCoefficient": of("kettle.lossCoefficient", kettle.lossCoefficient),
    "kettle.boilOff": of("kettle.boilOff", kettle.boilOff),
    "kettle.trub": of("kettle.trub", kettle.trub),
    "kettle.transfer": of("kettle.transfer", kettle.transfer),
    "lauter.absorption": of("lauter.absorption", lauter.absorption),
    "lauter.deadSpace": of("lauter.deadSpace", lauter.deadSpace),
    "lauter.bypass": of("lauter.bypass", lauter.bypass),
    "lauter.conversion": of("lauter.conversion", lauter.conversion),
    hopAbsorption: of("hopAbsorption", equipment.hopAbsorption),
    "chiller.conductance": of("chiller.conductance", chiller.conductance),
    "fermenter.left": of("fermenter.left", fermenter.left),
  };
}

const yesNo = (value: boolean): string => (value ? "yes" : "no");
