import { boilingPoint, elementPower, latentHeat } from "../heat";
import type { Ambient, Equipment } from "./equipment";

/** Share of the stated boil-off below which it is no boil any more. Common practice, no source. */
const GENTLEST_BOIL = 0.5;

/** Heater, boiling point and what the boil asks of the heater; they do not depend on the volumes. */
export interface KettleHeat {
  readonly electricW: number;
  readonly heatW: number;
  readonly boilC: number;
  /** What boils off: the stated rate, or less where this heater on this supply cannot hold it. */
  readonly boilOffKgPerH: number;
  /** Heat that this boil and the loss of the kettle take. */
  readonly boilHeatW: number;
  /** Heat that the gentlest boil worth the name takes. */
  readonly leastBoilHeatW: number;
}

/**
 * Finds what the kettle's heater gives on this supply and what the boil needs.
 *
 * @returns Powers, W; boiling point, °C; boil-off, kg/h.
 * @source P ∝ V² and the heat of vaporisation (docs/sources.md#energy-balance)
 */
export function kettleHeat(equipment: Equipment, ambient: Ambient): KettleHeat {
  const { kettle } = equipment;
  const electricW = elementPower({
    ratedW: kettle.ratedPower,
    ratedV: kettle.ratedVoltage,
    supplyV: kettle.supplyVoltage,
  });
  const heatW = electricW * kettle.heatShare.value;
  const boilC = boilingPoint({ altitudeM: equipment.altitude });
  const lossW = kettle.lossCoefficient.value * (boilC - ambient.air);
  const wattsPerKgPerH = latentHeat(boilC) / 3600;
  const boilOffKgPerH = Math.min(kettle.boilOff.value, Math.max(0, (heatW - lossW) / wattsPerKgPerH));
  return {
    electricW,
    heatW,
    boilC,
    boilOffKgPerH,
    boilHeatW: lossW + boilOffKgPerH * wattsPerKgPerH,
    leastBoilHeatW: lossW + GENTLEST_BOIL * kettle.boilOff.value * wattsPerKgPerH,
  };
}
