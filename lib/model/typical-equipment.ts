import type { Equipment, Figure } from "@/lib/calc/ledger";
import { boilingPoint, elementPower, latentHeat } from "@/lib/calc/heat";
import {
  celsius,
  fraction,
  joulesPerKelvin,
  kilograms,
  kilogramsPerHour,
  litres,
  litresPerKilogram,
  litresPerMinute,
  squareMetres,
  wattsPerKelvin,
  type Litres,
  type Metres,
  type Volts,
  type Watts,
} from "@/lib/calc/units";

/** What a person knows of a kettle before brewing on it. */
export interface EquipmentAnswers {
  readonly name: string;
  readonly kind: EquipmentKind;
  readonly capacity: Litres;
  /** As on the rating plate; the plate's voltage is taken as that of the supply. */
  readonly power: Watts;
  readonly voltage: Volts;
  readonly usualBatch: Litres;
  readonly altitude: Metres;
}

/**
 * Figures of a kind of equipment, all common practice, no source. A first brew on them is a guess with honest width:
 * a water-only trial or a few logged brews replace them.
 */
const KINDS = {
  "electric with basket": {
    words: "Electric kettle with a basket that is lifted out",
    heatShare: [0.97, 0.03],
    // Part of the kettle's volume that must stay wet over the element.
    minimumShare: 0.2,
    mash: { kind: "basket", share: 0.92, kgPerLitre: 0.22, falseBottom: true, heated: true },
    lauter: { method: "pour-over", absorption: [0.8, 0.12], deadL: 0, bypass: [0.25, 0.12] },
    chiller: "immersion",
  },
  "electric with bag": {
    words: "Electric kettle with a bag",
    heatShare: [0.97, 0.03],
    minimumShare: 0.1,
    mash: { kind: "bag", share: 0.95, kgPerLitre: null, falseBottom: false, heated: true },
    lauter: { method: "none", absorption: [0.65, 0.15], deadL: 0, bypass: [0, 0] },
    chiller: "immersion",
  },
  "kettle and mash tun": {
    words: "Kettle with a separate mash tun",
    heatShare: [0.97, 0.03],
    minimumShare: 0.1,
    mash: { kind: "tun", share: 1, kgPerLitre: null, falseBottom: true, heated: false },
    lauter: { method: "batch", absorption: [1, 0.12], deadL: 1, bypass: [0.1, 0.08] },
    chiller: "immersion",
  },
  "pot on a hob": {
    words: "Pot with a bag on a kitchen hob",
    heatShare: [0.7, 0.15],
    minimumShare: 0,
    mash: { kind: "bag", share: 0.95, kgPerLitre: null, falseBottom: false, heated: true },
    lauter: { method: "none", absorption: [0.65, 0.15], deadL: 0, bypass: [0, 0] },
    chiller: "ice bath",
  },
} as const;

export type EquipmentKind = keyof typeof KINDS;

export const EQUIPMENT_KINDS = [
  "electric with basket",
  "electric with bag",
  "kettle and mash tun",
  "pot on a hob",
] as const satisfies readonly EquipmentKind[];

export function equipmentKindWords(kind: EquipmentKind): string {
  return KINDS[kind].words;
}

/** Common practice, no source, unless a line says otherwise. */
const TYPICAL = {
  /** Height of a kettle over its diameter. */
  slenderness: 1.2,
  /** Sheet steel with lid and fittings: 0.2 kg for each litre of kettle, 500 J/(kg·K). */
  vesselJPerKelvinPerLitre: 100,
  /** Still air and radiation on bare steel, W/(m²·K); a jacket halves it. */
  wallLoss: 15,
  wallLossSd: 0.35,
  /** A rolling boil on an open kettle, kg/(h·m²). */
  boilOffPerArea: 28,
  boilOffSd: 0.25,
  /** What a boil may ask of the heater, so that a weak one gets a weak boil. */
  boilShare: 0.8,
  headspaceShare: 0.08,
  trubShare: 0.06,
  transferShare: 0.025,
  lossSd: 0.5,
  thickestLPerKg: 2.2,
  conversion: [0.94, 0.04],
  hopLPerKg: [6, 2.5],
  chillerWPerKelvinPerLitre: 20,
  chillerSd: 0.35,
  coolantLPerMin: 8,
  coolantC: 12,
  fermenterOverBatch: 1.4,
  fermenterHeadspaceShare: 0.15,
  yeastBedShare: 0.05,
  airC: 20,
} as const;

/** Estimates a whole equipment profile from five answers; every figure is marked "typical" and has a wide uncertainty. */
export function typicalEquipment(answers: EquipmentAnswers): Equipment {
  const { name, capacity, usualBatch, altitude } = answers;
  const kind = KINDS[answers.kind];
  const diameterM = ((4 * capacity) / 1000 / (Math.PI * TYPICAL.slenderness)) ** (1 / 3);
  return {
    name,
    kettle: kettleOf(answers, diameterM),
    mash: {
      kind: kind.mash.kind,
      capacity: litres(tidy(kind.mash.share * capacity)),
      grainLimit: kind.mash.kgPerLitre === null ? null : kilograms(tidy(kind.mash.kgPerLitre * capacity)),
      falseBottom: kind.mash.falseBottom,
      heated: kind.mash.heated,
      heatCapacity: joulesPerKelvin(tidy(0.4 * TYPICAL.vesselJPerKelvinPerLitre * capacity)),
      lossCoefficient: wattsPerKelvin(tidy(wallLossWPerK(diameterM))),
      thickest: litresPerKilogram(TYPICAL.thickestLPerKg),
    },
    lauter: {
      method: kind.lauter.method,
      absorption: typical(litresPerKilogram, kind.lauter.absorption),
      deadSpace: relative(litres, kind.lauter.deadL, TYPICAL.lossSd),
      bypass: typical(fraction, kind.lauter.bypass),
      conversion: typical(fraction, TYPICAL.conversion),
      spargeHeater: null,
    },
    hopAbsorption: typical(litresPerKilogram, TYPICAL.hopLPerKg),
    chiller: {
      kind: kind.chiller,
      conductance: relative(wattsPerKelvin, TYPICAL.chillerWPerKelvinPerLitre * usualBatch, TYPICAL.chillerSd),
      coolantFlow: litresPerMinute(TYPICAL.coolantLPerMin),
      coolant: celsius(kind.chiller === "ice bath" ? 2 : TYPICAL.coolantC),
    },
    fermenter: {
      capacity: litres(tidy(TYPICAL.fermenterOverBatch * usualBatch)),
      headspace: litres(tidy(TYPICAL.fermenterHeadspaceShare * TYPICAL.fermenterOverBatch * usualBatch)),
      left: relative(litres, TYPICAL.yeastBedShare * usualBatch, TYPICAL.lossSd),
    },
    usualBatch,
    altitude,
  };
}

function kettleOf(answers: EquipmentAnswers, diameterM: number): Equipment["kettle"] {
  const { capacity, power, voltage, usualBatch } = answers;
  const kind = KINDS[answers.kind];
  const lossWPerK = wallLossWPerK(diameterM);
  return {
    capacity,
    headspace: litres(tidy(TYPICAL.headspaceShare * capacity)),
    minimum: litres(tidy(kind.minimumShare * capacity)),
    openArea: squareMetres(tidy(surfaceM2(diameterM))),
    lid: true,
    heatCapacity: joulesPerKelvin(tidy(TYPICAL.vesselJPerKelvinPerLitre * capacity)),
    ratedPower: power,
    ratedVoltage: voltage,
    supplyVoltage: voltage,
    heatShare: typical(fraction, kind.heatShare),
    lossCoefficient: relative(wattsPerKelvin, lossWPerK, TYPICAL.wallLossSd),
    boilOff: relative(kilogramsPerHour, boilOffKgPerH(answers, diameterM, lossWPerK), TYPICAL.boilOffSd),
    trub: relative(litres, TYPICAL.trubShare * usualBatch, TYPICAL.lossSd),
    transfer: relative(litres, TYPICAL.transferShare * usualBatch, TYPICAL.lossSd),
  };
}

/** A rolling boil, or what the heater can hold after the losses of the wall; a weak hob has nearly none. */
function boilOffKgPerH(answers: EquipmentAnswers, diameterM: number, lossWPerK: number): number {
  const { power, voltage, altitude } = answers;
  const boilC = boilingPoint({ altitudeM: altitude });
  const drawnW = elementPower({ ratedW: power, ratedV: voltage, supplyV: voltage });
  const netW = drawnW * KINDS[answers.kind].heatShare[0] - lossWPerK * (boilC - TYPICAL.airC);
  const heldKgPerH = (3600 * Math.max(0, netW)) / latentHeat(boilC);
  return Math.min(TYPICAL.boilOffPerArea * surfaceM2(diameterM), TYPICAL.boilShare * heldKgPerH);
}

const surfaceM2 = (diameterM: number): number => (Math.PI * diameterM ** 2) / 4;

/** Side, bottom and lid of a cylinder. */
function wallLossWPerK(diameterM: number): number {
  return TYPICAL.wallLoss * Math.PI * diameterM ** 2 * (TYPICAL.slenderness + 1 / 2);
}

function typical<Q extends number>(make: (value: number) => Q, [value, sd]: readonly [number, number]): Figure<Q> {
  return { value: make(tidy(value)), sd: tidy(sd), from: "typical", count: 0 };
}

function relative<Q extends number>(make: (value: number) => Q, value: number, share: number): Figure<Q> {
  return typical(make, [value, share * value]);
}

/** Two digits, since more would claim knowledge. */
function tidy(value: number): number {
  return Number(value.toPrecision(2));
}
