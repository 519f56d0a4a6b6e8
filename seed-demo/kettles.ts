import type { Ambient, Equipment, Figure } from "@/lib/calc/ledger";
import { celsius, fraction, kilogramsPerHour, litres, metres, volts, watts, wattsPerKelvin } from "@/lib/calc/units";
import { typicalEquipment, type EquipmentKind } from "@/lib/model/typical-equipment";

/** Invented kettles of the demo club: estimated from five answers like a member's own, then partly measured. */
export interface DemoKettle {
  readonly owner: string;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}

interface Plan {
  readonly owner: string;
  readonly name: string;
  readonly kind: EquipmentKind;
  readonly litres: number;
  readonly watts: number;
  readonly volts: number;
  readonly batch: number;
  readonly altitude?: number;
  readonly change?: (typical: Equipment) => Equipment;
  readonly air?: number;
}

const HIGH_PLAIN_M = 1600;

/** A figure that the owner has measured in a trial with water. */
const measured = <Q extends number>(value: Q, sd: number, count = 2): Figure<Q> => ({
  value,
  sd,
  from: "measured",
  count,
});

const counterflow = (equipment: Equipment): Equipment => ({
  ...equipment,
  chiller: { ...equipment.chiller, kind: "counterflow" },
});

const trialled =
  (boilOff: number, loss: number) =>
  (equipment: Equipment): Equipment => ({
    ...equipment,
    kettle: {
      ...equipment.kettle,
      boilOff: measured(kilogramsPerHour(boilOff), 0.12),
      lossCoefficient: measured(wattsPerKelvin(loss), 0.6),
    },
  });

const sieved =
  (bypass: number) =>
  (equipment: Equipment): Equipment => ({
    ...equipment,
    lauter: { ...equipment.lauter, bypass: measured(fraction(bypass), 0.06, 3) },
  });

const chain =
  (...steps: readonly ((equipment: Equipment) => Equipment)[]) =>
  (equipment: Equipment): Equipment =>
    steps.reduce((now, step) => step(now), equipment);

/** Three vessels: a sparge heater of its own, and the mash washed continuously. */
const threeVessels = (equipment: Equipment): Equipment => ({
  ...equipment,
  lauter: { ...equipment.lauter, method: "continuous", spargeHeater: watts(3500) },
});

const PLANS: readonly Plan[] = [
  {
    owner: "organiser",
    name: "Cellar thirty-five",
    kind: "electric with basket",
    litres: 35,
    watts: 2500,
    volts: 230,
    batch: 21,
    change: chain(trialled(2.4, 6), sieved(0.45)),
  },
  {
    owner: "member",
    name: "Shed fifty",
    kind: "electric with basket",
    litres: 52,
    watts: 3500,
    volts: 230,
    batch: 32,
    change: chain(trialled(3.3, 8), sieved(0.4), counterflow),
    air: 12,
  },
  { owner: "tamsin", name: "Kitchen twelve", kind: "pot on a hob", litres: 14, watts: 2000, volts: 230, batch: 7 },
  {
    owner: "bero",
    name: "Blue barrel",
    kind: "electric with bag",
    litres: 42,
    watts: 3000,
    volts: 230,
    batch: 24,
    change: counterflow,
    air: 16,
  },
  {
    owner: "wilma",
    name: "Pantry twenty",
    kind: "electric with basket",
    litres: 20,
    watts: 1600,
    volts: 120,
    batch: 10,
    change: (equipment) => ({ ...equipment, kettle: { ...equipment.kettle, supplyVoltage: volts(112) } }),
  },
  {
    owner: "ivo",
    name: "Coach-house seventy",
    kind: "kettle and mash tun",
    litres: 72,
    watts: 5500,
    volts: 230,
    batch: 45,
    change: counterflow,
    air: 10,
  },
  {
    owner: "petra",
    name: "Barn hundred",
    kind: "kettle and mash tun",
    litres: 105,
    watts: 8500,
    volts: 230,
    batch: 65,
    change: chain(threeVessels, counterflow),
    air: 8,
  },
  {
    owner: "kasper",
    name: "Plateau thirty",
    kind: "electric with basket",
    litres: 30,
    watts: 2400,
    volts: 230,
    batch: 18,
    altitude: HIGH_PLAIN_M,
    change: sieved(0.5),
  },
  {
    owner: "dunja",
    name: "Plateau tun",
    kind: "kettle and mash tun",
    litres: 40,
    watts: 1900,
    volts: 110,
    batch: 20,
    altitude: HIGH_PLAIN_M,
    air: 14,
  },
  { owner: "emrys", name: "Old boiler", kind: "electric with bag", litres: 27, watts: 2400, volts: 230, batch: 15 },
  {
    owner: "sunniva",
    name: "Harbour sixty-five",
    kind: "electric with basket",
    litres: 65,
    watts: 5000,
    volts: 230,
    batch: 40,
    change: trialled(4.2, 9),
  },
  {
    owner: "member",
    name: "Test pot",
    kind: "electric with basket",
    litres: 16,
    watts: 1800,
    volts: 230,
    batch: 8,
    air: 12,
  },
];

function build(plan: Plan): DemoKettle {
  const typical = typicalEquipment({
    name: plan.name,
    kind: plan.kind,
    capacity: litres(plan.litres),
    power: watts(plan.watts),
    voltage: volts(plan.volts),
    usualBatch: litres(plan.batch),
    altitude: metres(plan.altitude ?? 40),
  });
  return {
    owner: plan.owner,
    equipment: plan.change?.(typical) ?? typical,
    ambient: {
      air: celsius(plan.air ?? 19),
      humidity: fraction(0.6),
      tapWater: celsius(12),
      grain: celsius(plan.air ?? 19),
    },
  };
}

export const DEMO_KETTLES: readonly DemoKettle[] = PLANS.map(build);
