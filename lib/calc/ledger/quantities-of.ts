import { firstWortPlato } from "../mash";
import { kilograms } from "../units";
import { phOfMash } from "./acidity-of";
import type { BrewState } from "./brew-state";
import type { Heating } from "./heating";
import { mashLitres } from "./limits";
import { waterL } from "./mass-balance";
import { QUANTITY_IDS, type QuantityId } from "./quantity-catalogue";
import { postBoilLitres, runOffLitres } from "./volumes";

type Values = Record<QuantityId, number | null>;

/** Copied for each ledger: one shape for all of them is what keeps ten thousand of them a second cheap. */
const BLANK = Object.fromEntries(QUANTITY_IDS.map((id) => [id, null])) as Values;

const minutesOf = (heating: Heating): number | null => (heating.ok ? heating.minutes : null);

/**
 * Names every number of the ledger.
 *
 * @returns A value for each quantity of the catalogue; null where reality has none.
 * @source Each quantity names its own in its explanation (docs/sources.md#mass-balance)
 */
export function quantitiesOf(state: BrewState): Readonly<Record<QuantityId, number | null>> {
  const values = { ...BLANK };
  waterValues(values, state);
  mashValues(values, state);
  lauterValues(values, state);
  kettleValues(values, state);
  standValues(values, state);
  fermenterValues(values, state);
  packageValues(values, state);
  dayValues(values, state);
  return values;
}

function waterValues(values: Values, state: BrewState): void {
  const { masses, water, day } = state;
  values["water.total"] = waterL(masses.mashWaterKg + masses.spargeKg + masses.topUpKg);
  values["water.mash"] = waterL(masses.mashWaterKg);
  values["water.sparge"] = waterL(masses.spargeKg);
  values["water.topUp"] = waterL(masses.topUpKg);
  values["water.calcium"] = water.ions.calcium;
  values["water.magnesium"] = water.ions.magnesium;
  values["water.sodium"] = water.ions.sodium;
  values["water.sulfate"] = water.ions.sulfate;
  values["water.chloride"] = water.ions.chloride;
  values["water.bicarbonate"] = water.ions.bicarbonate;
  values["water.residualAlkalinity"] = water.residualAlkalinity;
  values["water.strike"] = day.waters.strikeC;
  values["water.heatingTime"] = minutesOf(day.strikeHeating);
}

function mashValues(values: Values, { recipe, sums, masses, day, mashed: malt }: BrewState): void {
  const mashed = sums.gristKg > 0;
  values["mash.grist"] = sums.gristKg;
  values["mash.thickness"] = mashed ? waterL(masses.mashWaterKg) / sums.gristKg : null;
  values["mash.volume"] = mashLitres(recipe, masses, sums);
  values["mash.potential"] = sums.potentialKg;
  values["mash.dissolved"] = sums.dissolvedKg;
  values["mash.firstWort"] = mashed
    ? firstWortPlato({
        water: kilograms(masses.mashWaterKg),
        maltWater: kilograms(sums.maltWaterKg),
        dissolved: kilograms(sums.dissolvedKg),
      })
    : null;
  values["mash.ph"] = phOfMash(recipe, masses);
  values["mash.conversion"] = malt === null ? null : malt.converted;
  values["mash.time"] = day.mashMin;
}

function lauterValues(values: Values, { sums, masses }: BrewState): void {
  values["lauter.runOff"] = runOffLitres(masses, 20);
  values["lauter.retained"] = masses.retainedL;
  values["lauter.lost"] = masses.retainedExtractKg;
  values["lauter.efficiency"] = sums.gristKg > 0 ? masses.lauterEfficiency : null;
}

function kettleValues(values: Values, { masses, heat, day }: BrewState): void {
  values["kettle.preBoil"] = runOffLitres(masses, heat.boilC);
  values["kettle.preBoilGravity"] = (100 * masses.runOffExtractKg) / masses.runOffKg;
  values["kettle.boilingPoint"] = heat.boilC;
  values["kettle.power"] = heat.electricW;
  values["kettle.heatingTime"] = minutesOf(day.boilHeating);
  values["kettle.evaporated"] = waterL(masses.evaporatedKg);
  values["kettle.postBoil"] = postBoilLitres(masses, heat.boilC);
  values["kettle.postBoilGravity"] = (100 * masses.postBoilExtractKg) / masses.postBoilKg;
}

function standValues(values: Values, { recipe, masses, day }: BrewState): void {
  values["stand.lost"] = masses.leftL;
  values["stand.coolingTime"] = recipe.stand === null ? null : day.cooling.toStandMin;
  values["stand.chillTime"] = day.cooling.chillMin;
}

function fermenterValues(values: Values, { sums, masses, beer, hops, colourEbc }: BrewState): void {
  values["fermenter.volume"] = masses.fermenterL;
  values["fermenter.originalExtract"] = beer.originalPlato;
  values["fermenter.bitterness"] = hops.reduce((total, hop) => total + hop.ibu, 0);
  values["fermenter.colour"] = colourEbc;
  values["fermenter.efficiency"] = masses.fermenterExtractKg / (sums.potentialKg + sums.addedExtractKg);
  values["fermenter.cells"] = beer.cellsBillion;
  values["fermenter.attenuation"] = beer.attenuation;
  values["fermenter.finalExtract"] = beer.finalPlato;
}

function packageValues(values: Values, { recipe, beer }: BrewState): void {
  values["package.volume"] = beer.packagedL;
  values["package.alcohol"] = beer.alcoholByVolume;
  values["package.energyContent"] = beer.kcalPerLitre;
  values["package.carbonation"] = recipe.packaging.carbonation;
  values["package.primingSugar"] = beer.primingG;
  values["package.pressure"] = beer.pressureBar;
}

function dayValues(values: Values, { day }: BrewState): void {
  const last = day.phases.at(-1);
  const minutes = last === undefined ? 0 : last.startMin + last.minutes;
  values["day.time"] = day.energyKWh === null ? null : minutes;
  values["day.energy"] = day.energyKWh;
}
