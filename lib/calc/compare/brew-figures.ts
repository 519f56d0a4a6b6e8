import { MOST_ATTENUATION } from "../alcohol";
import { waterDensity } from "../gravity";
import { celsius } from "../units";
import { PLAN_FIGURES } from "./balance-variables";
import { residualExtractKg } from "./measured-wort";
import type { PlannedBrew } from "./planned-brew";
import { litresOf, waterMass } from "./wort-mass";

/** What a brew can be told by from the mash water to the package: all readings of the balances follow from these. */
export const BREW_FIGURES = ["water.mash", ...PLAN_FIGURES, "attenuation"] as const;

export type BrewFigureId = (typeof BREW_FIGURES)[number];
export type BrewFigures = Readonly<Record<BrewFigureId, number>>;

/** A wort at one station, kg, with its strength, °P, and its volume as it is read there, L. */
export interface FollowedWort {
  readonly kg: number;
  readonly extractKg: number;
  readonly plato: number;
  readonly litres: number;
}

/** The brew that follows from the figures; every balance of it closes. */
export interface FollowedBrew {
  readonly firstWortPlato: number;
  readonly beforeBoil: FollowedWort;
  readonly endOfBoil: FollowedWort;
  /** Extract that stays behind with trub, hops and hoses. */
  readonly leftExtractKg: number;
  readonly fermenter: FollowedWort;
  readonly finalPlato: number;
  /** Real extract that yeast left in the beer. */
  readonly residualKg: number;
  readonly packagedL: number;
}

const WATER_KG_PER_L = waterDensity(celsius(20));

/**
 * Reads the figures from the plan.
 *
 * @returns Each as planned, in the units of their names.
 */
export function plannedFigures(plan: PlannedBrew): BrewFigures {
  return {
    "water.mash": plan.mashWaterL,
    spargeL: plan.spargeL,
    dissolvedKg: plan.dissolvedKg,
    lauterLostKg: plan.lauterLostKg,
    retainedKg: plan.retainedKg,
    evaporatedKg: plan.evaporatedKg,
    leftKg: plan.leftKg,
    beerLeftL: plan.beerLeftL,
    attenuation: plan.attenuation,
  };
}

/**
 * Follows water and extract from the mash to the package, station by station.
 *
 * The balances of `balanceErrors` solved for what each station holds.
 *
 * @returns Masses, kg, strengths, °P, and volumes, L, at each station.
 * @source Conservation of mass and extract (docs/sources.md#mass-balance); Balling (docs/sources.md#balling-1865)
 */
export function followBrew(plan: PlannedBrew, figures: BrewFigures): FollowedBrew {
  const { dissolvedKg } = figures;
  const mashKg = waterMass(figures["water.mash"]) + plan.maltWaterKg + dissolvedKg;
  const beforeBoil = wortOf(
    mashKg + figures.spargeL * WATER_KG_PER_L - figures.retainedKg,
    dissolvedKg - figures.lauterLostKg,
    plan.boilC,
  );
  const endOfBoil = wortOf(
    beforeBoil.kg + plan.addedKg - figures.evaporatedKg,
    beforeBoil.extractKg + plan.addedExtractKg,
    plan.boilC,
  );
  const leftExtractKg = endOfBoil.kg > 0 ? (endOfBoil.extractKg * figures.leftKg) / endOfBoil.kg : 0;
  const fermenter = wortOf(endOfBoil.kg - figures.leftKg + plan.topUpKg, endOfBoil.extractKg - leftExtractKg, 20);
  const finalPlato = fermenter.plato * (1 - Math.min(MOST_ATTENUATION, Math.max(0, figures.attenuation)));
  return {
    firstWortPlato: strength(dissolvedKg, mashKg),
    beforeBoil,
    endOfBoil,
    leftExtractKg,
    fermenter,
    finalPlato,
    residualKg: residualExtractKg(fermenter, { originalPlato: fermenter.plato, finalPlato }) ?? fermenter.extractKg,
    packagedL: plan.beerPerWort * fermenter.litres - figures.beerLeftL,
  };
}

function wortOf(kg: number, extractKg: number, atC: number): FollowedWort {
  const plato = strength(extractKg, kg);
  return { kg, extractKg, plato, litres: litresOf(kg, plato, atC) };
}

function strength(extractKg: number, kg: number): number {
  return kg > 0 ? (100 * extractKg) / kg : 0;
}
