import { antoinePressure } from "../heat/antoine";
import { evaporativeLoss } from "../heat/evaporation-flux";
import { latentHeatOf } from "../heat/latent-heat";
import { STILL_AIR_SPEED } from "../heat/still-air";
import { WATER_HEAT_CAPACITY } from "../heat/wort-heat-capacity";

/** A vessel of water that is heated or left to cool. */
export interface VesselCourse {
  readonly massKg: number;
  readonly vesselHeatCapacity: number;
  readonly powerW: number;
  readonly lossCoefficient: number;
  readonly openAreaM2: number;
  readonly ambientC: number;
  readonly relativeHumidity: number;
  readonly startC: number;
}

const LONGEST_STEP_S = 120;

/**
 * Follows the temperature of a well-mixed vessel over time: C(m) dT/dt = P − U (T − Ta) − A·q(T), as `heatUp` does.
 *
 * @param seconds - Times after the start, rising.
 * @returns °C at each of them, by Runge–Kutta steps of two minutes at most.
 */
export function vesselCourse(vessel: VesselCourse, seconds: readonly number[]): number[] {
  const { vesselHeatCapacity, powerW, lossCoefficient, ambientC, openAreaM2 } = vessel;
  const airKPa = vessel.relativeHumidity * antoinePressure(ambientC);
  const wattsPerKPa = openAreaM2 * evaporativeLoss(1, STILL_AIR_SPEED);
  const evaporationW = (celsius: number): number =>
    wattsPerKPa === 0 ? 0 : wattsPerKPa * Math.max(0, antoinePressure(celsius) - airKPa);
  const slope = (celsius: number, massKg: number): number =>
    (powerW - lossCoefficient * (celsius - ambientC) - evaporationW(celsius)) /
    (massKg * WATER_HEAT_CAPACITY + vesselHeatCapacity);

  let celsius = vessel.startC;
  let massKg = vessel.massKg;
  let at = 0;
  return seconds.map((until) => {
    const steps = Math.max(1, Math.ceil((until - at) / LONGEST_STEP_S));
    const h = (until - at) / steps;
    for (let i = 0; i < steps; i++) {
      const k1 = slope(celsius, massKg);
      const k2 = slope(celsius + (h / 2) * k1, massKg);
      const k3 = slope(celsius + (h / 2) * k2, massKg);
      const k4 = slope(celsius + h * k3, massKg);
      const gainK = (h / 6) * (k1 + 2 * (k2 + k3) + k4);
      if (wattsPerKPa > 0) {
        const middleC = celsius + gainK / 2;
        massKg -= (h * evaporationW(middleC)) / latentHeatOf(middleC);
      }
      celsius += gainK;
    }
    at = until;
    return celsius;
  });
}
