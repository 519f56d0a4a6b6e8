import { celsius } from "../units";
import { waterDensity } from "../gravity";
import { densityAt20 } from "./mass-balance";

/** Wort that must stand in the kettle at the end of the boil; kg. */
export interface WortTarget {
  readonly postBoilKg: number;
  readonly postBoilExtractKg: number;
}

const WATER_20 = waterDensity(celsius(20));

/**
 * Works back from the fermenter to the end of the boil.
 *
 * @param a.intoFermenter - Volume wanted in the fermenter, L at 20 °C.
 * @param a.originalPlato - Strength wanted there, °P.
 * @param a.topUp - Of it, water added after the boil, L at 20 °C.
 * @param a.leftL - Wort that trub, hops, chiller and hoses keep, L at 20 °C.
 * @returns Mass and extract at the end of the boil, kg.
 * @source Mass balance (docs/sources.md#mass-balance)
 */
export function wortTarget(a: {
  readonly intoFermenter: number;
  readonly originalPlato: number;
  readonly topUp: number;
  readonly leftL: number;
}): WortTarget {
  const fermenterKg = a.intoFermenter * densityAt20(a.originalPlato);
  const extractKg = (fermenterKg * a.originalPlato) / 100;
  const wortKg = fermenterKg - a.topUp * WATER_20;
  const plato = (100 * extractKg) / wortKg;
  const leftKg = a.leftL * densityAt20(plato);
  return { postBoilKg: wortKg + leftKg, postBoilExtractKg: extractKg + (leftKg * plato) / 100 };
}
