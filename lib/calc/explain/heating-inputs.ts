import type { ExplanationInput } from "./explanation";
import type { ExplanationContext } from "./explanation-context";
import { figure, figureInUnit, inUnit, measure, ofLedger } from "./explanation-inputs";

const SYMBOLS =
  "with C = heat capacity of contents and kettle, P = heater power × share that reaches the liquid, U = heat loss for each degree";

/** Time to heat where nothing evaporates. */
export const HEATING_EQUATION = `time = ∫ C dT / (P − U × (T − air)), ${SYMBOLS}`;

/** Time to heat with an open surface. */
export const OPEN_HEATING_EQUATION = `time = ∫ C dT / (P − U × (T − air) − E), ${SYMBOLS}, E = heat that evaporation carries off the open surface`;

/**
 * Lists what every heating in this kettle rests on.
 *
 * @returns Power, losses and surroundings.
 */
export function heatingInputs(a: ExplanationContext): ExplanationInput[] {
  const { kettle } = a.equipment;
  return [
    ...ofLedger(a, "kettle.power"),
    figure("Share of the power that reaches the liquid", kettle.heatShare, "fraction"),
    figureInUnit("Heat loss of the kettle", kettle.lossCoefficient, "W/K"),
    inUnit("Heat capacity of the empty kettle", kettle.heatCapacity, "J/K"),
    measure("Air", a.ambient.air, "temperature"),
  ];
}
