import { heatUp } from "../heat";
import { celsius, degreesPlato, joulesPerKelvin, kilograms, squareMetres, watts, wattsPerKelvin } from "../units";
import type { Ambient, Equipment } from "./equipment";
import type { GristSums } from "./grist-sums";
import type { KettleHeat } from "./kettle-heat";
import type { Masses } from "./mass-balance";
import { MALT_TO_WATER_HEAT } from "./mash-steps";

/** One heating run: how long and what evaporated, or where it stalls. */
export type Heating =
  | { readonly ok: true; readonly minutes: number; readonly evaporatedKg: number }
  | { readonly ok: false; readonly ceilingC: number };

interface HeatingInput {
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly sums: GristSums;
  readonly masses: Masses;
  readonly heat: KettleHeat;
}

/**
 * Heats the strike water in the kettle.
 *
 * @returns Minutes, or where it stalls.
 * @source Energy balance (docs/sources.md#energy-balance)
 */
export function heatWater(a: HeatingInput, waterKg: number, toC: number): Heating {
  return run(a, { massKg: waterKg, plato: 0, fromC: a.ambient.tapWater, toC, openAreaM2: 0, extraHeatCapacity: 0 });
}

/**
 * Heats the mash from one rest to the next; the grain counts as its weight in water times the ratio of the heats.
 *
 * @returns Minutes, or where it stalls.
 * @source Energy balance (docs/sources.md#energy-balance, docs/sources.md#brewing-room-book-1985)
 */
export function heatMash(a: HeatingInput, fromC: number, toC: number): Heating {
  const massKg = a.masses.mashWaterKg + MALT_TO_WATER_HEAT * a.sums.gristKg;
  return run(a, { massKg, plato: 0, fromC, toC, openAreaM2: 0, extraHeatCapacity: a.equipment.mash.heatCapacity });
}

/**
 * Heats the wort to the boil, with or without a lid.
 *
 * @returns Minutes and what evaporated, or where it stalls.
 * @source Energy balance (docs/sources.md#energy-balance, docs/sources.md#ashrae-carrier)
 */
export function heatToBoil(a: HeatingInput, fromC: number): Heating {
  const { kettle } = a.equipment;
  const plato = Math.max(0, Math.min(35, (100 * a.masses.runOffExtractKg) / a.masses.runOffKg));
  const openAreaM2 = kettle.lid ? 0 : kettle.openArea;
  return run(a, { massKg: a.masses.runOffKg, plato, fromC, toC: a.heat.boilC, openAreaM2, extraHeatCapacity: 0 });
}

function run(
  a: HeatingInput,
  load: {
    readonly massKg: number;
    readonly plato: number;
    readonly fromC: number;
    readonly toC: number;
    readonly openAreaM2: number;
    readonly extraHeatCapacity: number;
  },
): Heating {
  if (load.toC <= load.fromC || load.massKg <= 0) return { ok: true, minutes: 0, evaporatedKg: 0 };
  const { kettle } = a.equipment;
  const heated = heatUp({
    massKg: kilograms(load.massKg),
    plato: degreesPlato(load.plato),
    vesselHeatCapacity: joulesPerKelvin(kettle.heatCapacity + load.extraHeatCapacity),
    powerW: watts(a.heat.heatW),
    lossCoefficient: wattsPerKelvin(kettle.lossCoefficient.value),
    openAreaM2: squareMetres(load.openAreaM2),
    fromC: celsius(load.fromC),
    toC: celsius(load.toC),
    ambientC: a.ambient.air,
    relativeHumidity: a.ambient.humidity,
  });
  return heated.ok
    ? { ok: true, minutes: heated.seconds / 60, evaporatedKg: heated.evaporatedKg }
    : { ok: false, ceilingC: heated.ceilingC };
}
