import { MALT_HEAT_CAPACITY, strikeTemperature, WATER_HEAT_CAPACITY } from "../heat";
import { celsius, joulesPerKelvin, kilograms } from "../units";
import type { Ambient, Equipment } from "./equipment";
import type { MashStep } from "./recipe";

/** Specific heat of malt over that of water. */
export const MALT_TO_WATER_HEAT = MALT_HEAT_CAPACITY / WATER_HEAT_CAPACITY;

export interface MashWaters {
  /** Water the grain is stirred into, kg. */
  readonly strikeKg: number;
  /** null when no water is left to strike with. */
  readonly strikeC: number | null;
  /** Boiling water to reach each later rest in a tun that cannot be heated, kg; 0 where the rest is heated or cooler. */
  readonly infusionsKg: readonly number[];
}

/** Heat capacity of the vessel the mash rests in, as far as the strike water must warm it. */
const coldVessel = (equipment: Equipment): number => (equipment.mash.kind === "tun" ? equipment.mash.heatCapacity : 0);

/**
 * Splits the mash water into strike water and infusions of boiling water, and finds the strike temperature.
 *
 * A basket or a bag hangs in the heated water and is as warm as it; a tun of its own starts at air temperature.
 *
 * @returns Masses in kg and the strike temperature, °C; negative masses say that the steps cannot be made.
 * @source Heat balance of mixing (docs/sources.md#energy-balance, docs/sources.md#brewing-room-book-1985)
 */
export function mashWaters(a: {
  readonly steps: readonly MashStep[];
  readonly mashWaterKg: number;
  readonly gristKg: number;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly boilC: number;
}): MashWaters {
  const { steps, gristKg, equipment, ambient, boilC } = a;
  const infusionsKg = new Array<number>(steps.length).fill(0);
  let waterKg = a.mashWaterKg;
  if (!equipment.mash.heated) {
    const otherKg = MALT_TO_WATER_HEAT * gristKg + coldVessel(equipment) / WATER_HEAT_CAPACITY;
    for (let i = steps.length - 1; i > 0; i--) {
      const to = steps[i]?.celsius ?? 0;
      const from = steps[i - 1]?.celsius ?? 0;
      if (to <= from) continue;
      // The infusion Wi = (T2 − T1)(s G + W) / (Tb − T2), solved for the water W before it.
      const before = (waterKg * (boilC - to) - (to - from) * otherKg) / (boilC - from);
      infusionsKg[i] = waterKg - before;
      waterKg = before;
    }
  }
  const first = steps[0];
  const strikeC =
    first === undefined || waterKg < LEAST_WATER_KG ? null : strikeOf(first, waterKg, gristKg, equipment, ambient);
  return { strikeKg: waterKg, strikeC, infusionsKg };
}

/** A gram of water strikes no mash. */
const LEAST_WATER_KG = 0.001;

/** Nobody strikes with water so hot; the limit of the strike water says that a brew asks for it. */
const HOTTEST_STRIKE_C = 300;

function strikeOf(first: MashStep, waterKg: number, gristKg: number, equipment: Equipment, ambient: Ambient): number {
  if (gristKg === 0) return first.celsius;
  const taken =
    MALT_TO_WATER_HEAT * gristKg * (first.celsius - ambient.grain) +
    (coldVessel(equipment) / WATER_HEAT_CAPACITY) * (first.celsius - ambient.air);
  if (Math.abs(taken) > (HOTTEST_STRIKE_C - first.celsius) * waterKg) return taken > 0 ? HOTTEST_STRIKE_C : 0;
  return strikeTemperature({
    mashC: first.celsius,
    grainC: ambient.grain,
    grainKg: kilograms(gristKg),
    waterKg: kilograms(waterKg),
    vesselHeatCapacity: joulesPerKelvin(coldVessel(equipment)),
    vesselC: celsius(ambient.air),
  });
}
