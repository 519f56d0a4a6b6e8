import { alcoholByVolume, alcoholByWeight, energyPerLitre, realExtract } from "../alcohol";
import { closedPressure, primingSugar } from "../carbonation";
import { cellsToPitch, predictedFinalPlato } from "../fermentation";
import { wortDensity } from "../gravity";
import { celsius, degreesPlato, litres } from "../units";
import type { Equipment } from "./equipment";
import type { GristSums } from "./grist-sums";
import type { FermentableResult } from "./ledger";
import type { Masses } from "./mass-balance";
import type { Recipe } from "./recipe";

/** Mass that Balling's fermentation turns to CO2 and yeast for each gram of alcohol, and the extract it takes. */
const CO2_AND_YEAST_PER_ALCOHOL = 0.9565 + 0.11;
const EXTRACT_PER_ALCOHOL = 2.0665;

/** Apparent over real attenuation, Balling: the alcohol makes the hydrometer read low. */
const REAL_TO_APPARENT = 0.8192;

/** The beer from pitching to the package; masses kg, volumes L at 20 °C. */
export interface Beer {
  readonly originalPlato: number;
  readonly finalPlato: number;
  readonly attenuation: number;
  readonly alcoholByVolume: number;
  readonly kcalPerLitre: number;
  readonly cellsBillion: number;
  readonly beerKg: number;
  readonly residualKg: number;
  readonly fermentedKg: number;
  readonly goneKg: number;
  readonly leftL: number;
  readonly leftKg: number;
  readonly packagedL: number;
  readonly primingG: number | null;
  readonly pressureBar: number;
}

/**
 * Follows the wort through fermentation into the package.
 *
 * The extract of the mash attenuates by the middle of the yeast's range and what the temperatures of the mash add to it,
 * malt extract by the middle alone, sugars by their own fermentability.
 *
 * @returns Strengths, masses, volumes and doses to the packaged beer.
 * @source Balling (docs/sources.md#balling-1865); attenuation ranges docs/sources.md#trade-practice
 */
export function afterBoil(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly sums: GristSums;
  readonly masses: Masses;
  readonly shares: readonly FermentableResult[];
  /** What the mash adds to the attenuation that the yeast is described with. */
  readonly shift: number;
}): Beer {
  const { recipe, equipment, sums, masses } = a;
  const originalPlato = degreesPlato((100 * masses.fermenterExtractKg) / masses.fermenterKg);
  const finalPlato = degreesPlato(
    predictedFinalPlato({ originalPlato, parts: attenuationParts(recipe, a.shares, a.shift) }),
  );
  const plato = { originalPlato, apparentPlato: finalPlato };
  const alcoholPercent = alcoholByWeight(plato);
  const beerKg = (masses.fermenterKg * 100) / (100 + CO2_AND_YEAST_PER_ALCOHOL * alcoholPercent);
  const fermentedKg = (EXTRACT_PER_ALCOHOL * alcoholPercent * beerKg) / 100;
  const density = wortDensity({ plato: finalPlato, celsius: celsius(20) });
  const beerL = beerKg / density;
  const leftL = Math.min(beerL, equipment.fermenter.left.value + equipment.hopAbsorption.value * sums.dryHopsKg);
  const packagedL = beerL - leftL;
  const { packaging, yeast } = recipe;
  return {
    originalPlato,
    finalPlato,
    attenuation: 1 - finalPlato / originalPlato,
    alcoholByVolume: alcoholByVolume(plato),
    kcalPerLitre: energyPerLitre(plato),
    cellsBillion: cellsToPitch({
      litres: litres(masses.fermenterL),
      plato: originalPlato,
      millionPerMlPlato: yeast.pitch,
    }),
    beerKg,
    residualKg: (realExtract(plato) * beerKg) / 100,
    fermentedKg,
    goneKg: masses.fermenterKg - beerKg,
    leftL,
    leftKg: leftL * density,
    packagedL,
    primingG: primingGrams(packaging, packagedL),
    pressureBar: closedPressure({ celsius: packaging.warmest, volumes: packaging.carbonation }),
  };
}

function primingGrams({ priming, carbonation, warmest }: Recipe["packaging"], packagedL: number): number | null {
  if (priming === null) return null;
  return primingSugar({ litres: litres(packagedL), targetVolumes: carbonation, celsius: warmest, sugar: priming });
}

function attenuationParts(
  recipe: Recipe,
  shares: readonly FermentableResult[],
  shift: number,
): readonly { readonly share: number; readonly attenuation: number }[] {
  const { attenuationLow, attenuationHigh } = recipe.yeast;
  const middle = (attenuationLow + attenuationHigh) / 2;
  const ofMash = Math.min(1, Math.max(0, middle + shift));
  return recipe.fermentables.map((row, i) => ({
    // Rounding may leave a single row a hair above the whole.
    share: Math.min(1, shares[i]?.share ?? 0),
    attenuation:
      row.fermentability !== null ? row.fermentability / REAL_TO_APPARENT : row.station === "mash" ? ofMash : middle,
  }));
}
