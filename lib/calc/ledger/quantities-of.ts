import { firstWortPlato } from "../mash";
import { kilograms } from "../units";
import type { BrewState } from "./brew-state";
import { brewingWater } from "./brewing-water";
import type { Heating } from "./heating";
import { mashLitres } from "./limits";
import { waterL } from "./mass-balance";
import type { QuantityId } from "./quantity-catalogue";
import { postBoilLitres, runOffLitres } from "./volumes";

type Values<Prefix extends string> = Readonly<Record<Extract<QuantityId, `${Prefix}.${string}`>, number | null>>;

const minutesOf = (heating: Heating): number | null => (heating.ok ? heating.minutes : null);

/**
 * Names every number of the ledger.
 *
 * @returns A value for each quantity of the catalogue; null where reality has none.
 * @source Each quantity names its own in its explanation (docs/sources.md#mass-balance)
 */
export function quantitiesOf(state: BrewState): Readonly<Record<QuantityId, number | null>> {
  return {
    ...waterValues(state),
    ...mashValues(state),
    ...lauterValues(state),
    ...kettleValues(state),
    ...standValues(state),
    ...fermenterValues(state),
    ...packageValues(state),
    ...dayValues(state),
  };
}

function waterValues(state: BrewState): Values<"water"> {
  const { masses, day } = state;
  const water = brewingWater(state.recipe.water, waterL(masses.mashWaterKg + masses.spargeKg));
  return {
    "water.total": waterL(masses.mashWaterKg + masses.spargeKg + masses.topUpKg),
    "water.mash": waterL(masses.mashWaterKg),
    "water.sparge": waterL(masses.spargeKg),
    "water.topUp": waterL(masses.topUpKg),
    "water.calcium": water.ions.calcium,
    "water.magnesium": water.ions.magnesium,
    "water.sodium": water.ions.sodium,
    "water.sulfate": water.ions.sulfate,
    "water.chloride": water.ions.chloride,
    "water.bicarbonate": water.ions.bicarbonate,
    "water.residualAlkalinity": water.residualAlkalinity,
    "water.strike": day.waters.strikeC,
    "water.heatingTime": minutesOf(day.strikeHeating),
  };
}

function mashValues({ recipe, sums, masses, day }: BrewState): Values<"mash"> {
  const mashed = sums.gristKg > 0;
  return {
    "mash.grist": sums.gristKg,
    "mash.thickness": mashed ? waterL(masses.mashWaterKg) / sums.gristKg : null,
    "mash.volume": mashLitres(recipe, masses, sums),
    "mash.potential": sums.potentialKg,
    "mash.dissolved": sums.dissolvedKg,
    "mash.firstWort": mashed
      ? firstWortPlato({
          water: kilograms(masses.mashWaterKg),
          maltWater: kilograms(sums.maltWaterKg),
          dissolved: kilograms(sums.dissolvedKg),
        })
      : null,
    "mash.time": day.mashMin,
  };
}

function lauterValues({ sums, masses }: BrewState): Values<"lauter"> {
  return {
    "lauter.runOff": runOffLitres(masses, 20),
    "lauter.retained": masses.retainedL,
    "lauter.lost": masses.retainedExtractKg,
    "lauter.efficiency": sums.gristKg > 0 ? masses.lauterEfficiency : null,
  };
}

function kettleValues({ masses, heat, day }: BrewState): Values<"kettle"> {
  return {
    "kettle.preBoil": runOffLitres(masses, heat.boilC),
    "kettle.preBoilGravity": (100 * masses.runOffExtractKg) / masses.runOffKg,
    "kettle.boilingPoint": heat.boilC,
    "kettle.power": heat.electricW,
    "kettle.heatingTime": minutesOf(day.boilHeating),
    "kettle.evaporated": waterL(masses.evaporatedKg),
    "kettle.postBoil": postBoilLitres(masses, heat.boilC),
    "kettle.postBoilGravity": (100 * masses.postBoilExtractKg) / masses.postBoilKg,
  };
}

function standValues({ recipe, masses, day }: BrewState): Values<"stand"> {
  return {
    "stand.lost": masses.leftL,
    "stand.coolingTime": recipe.stand === null ? null : day.cooling.toStandMin,
    "stand.chillTime": day.cooling.chillMin,
  };
}

function fermenterValues({ sums, masses, beer, hops, colourEbc }: BrewState): Values<"fermenter"> {
  return {
    "fermenter.volume": masses.fermenterL,
    "fermenter.originalExtract": beer.originalPlato,
    "fermenter.bitterness": hops.reduce((total, hop) => total + hop.ibu, 0),
    "fermenter.colour": colourEbc,
    "fermenter.efficiency": masses.fermenterExtractKg / (sums.potentialKg + sums.addedExtractKg),
    "fermenter.cells": beer.cellsBillion,
    "fermenter.attenuation": beer.attenuation,
    "fermenter.finalExtract": beer.finalPlato,
  };
}

function packageValues({ recipe, beer }: BrewState): Values<"package"> {
  return {
    "package.volume": beer.packagedL,
    "package.alcohol": beer.alcoholByVolume,
    "package.energyContent": beer.kcalPerLitre,
    "package.carbonation": recipe.packaging.carbonation,
    "package.primingSugar": beer.primingG,
    "package.pressure": beer.pressureBar,
  };
}

function dayValues({ day }: BrewState): Values<"day"> {
  const last = day.phases.at(-1);
  const minutes = last === undefined ? 0 : last.startMin + last.minutes;
  return { "day.time": day.energyKWh === null ? null : minutes, "day.energy": day.energyKWh };
}
