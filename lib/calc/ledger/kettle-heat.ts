import { boilingPoint, elementPower, latentHeat } from "../heat";
import type { Ambient, Equipment } from "./equipment";

/** Heater, boiling point and what the boil asks of the heater; they do not depend on the volumes. */
export interface KettleHeat {
  readonly electricW: number;
  readonly heatW: number;
  readonly boilC: number;
  /** Heat that the stated boil-off and the loss of the kettle take, W. */
  readonly boilHeatW: number;
}

/**
 * Finds what the kettle's heater gives on this supply and what the boil needs.
 *
 * @source P ∝ V² and the heat of vaporisation (docs/sources.md#energy-balance)
 */
export function kettleHeat(equipment: Equipment, ambient: Ambient): KettleHeat {
  const { kettle } = equipment;
  const electricW = elementPower({
    ratedW: kettle.ratedPower,
    ratedV: kettle.ratedVoltage,
    supplyV: kettle.supplyVoltage,
  });
  const boilC = boilingPoint({ altitudeM: equipment.altitude });
  const boilHeatW =
    (kettle.boilOff.value * latentHeat(boilC)) / 3600 + kettle.lossCoefficient.value * (boilC - ambient.air);
  return { electricW, heatW: electricW * kettle.heatShare.value, boilC, boilHeatW };
}
