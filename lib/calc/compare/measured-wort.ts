import { alcoholByWeight, realExtract } from "../alcohol";
import type { ReadValues } from "./latest-readings";
import { measuredExtracts } from "./measured-extracts";
import type { PlannedBrew } from "./planned-brew";
import { platoBeforeTopUp, wortMass, type WortMass } from "./wort-mass";

/** Where the readings of volume and gravity weigh the wort; null where one of them is missing. */
export interface MeasuredWort {
  readonly beforeBoil: WortMass | null;
  readonly endOfBoil: WortMass | null;
  readonly fermenter: WortMass | null;
  /** Real extract left in the beer, kg. */
  readonly residualKg: number | null;
}

/** Balling: CO2 and yeast that go with each gram of alcohol. */
const CO2_AND_YEAST_PER_ALCOHOL = 0.9565 + 0.11;

/**
 * Weighs wort and extract at each station where they were measured.
 *
 * Hot volumes are taken at the boiling point. The wort at the end of the boil is as strong as the original extract,
 * but for water added after it.
 *
 * @returns Masses, kg.
 * @source Mass balance (docs/sources.md#mass-balance); Balling (docs/sources.md#balling-1865)
 */
export function measuredWort(plan: PlannedBrew, read: ReadValues): MeasuredWort {
  const preBoilL = read["kettle.preBoil"];
  const preBoilPlato = read["kettle.preBoilGravity"];
  const postBoilL = read["kettle.postBoil"];
  const fermenterL = read["fermenter.volume"];
  const original = read["fermenter.originalExtract"];
  const weighed = (litres: number | undefined, plato: number | undefined, atC: number): WortMass | null =>
    litres === undefined || plato === undefined ? null : wortMass(litres, plato, atC);
  const fermenter = weighed(fermenterL, original, 20);
  return {
    beforeBoil: weighed(preBoilL, preBoilPlato, plan.boilC),
    endOfBoil: weighed(postBoilL, hotPlato(plan, original, fermenter), plan.boilC),
    fermenter,
    residualKg: residualKg(fermenter, read),
  };
}

function hotPlato(plan: PlannedBrew, original: number | undefined, fermenter: WortMass | null): number | undefined {
  if (original === undefined || plan.topUpKg === 0) return original;
  return fermenter === null ? undefined : platoBeforeTopUp(fermenter, original, plan.topUpKg);
}

function residualKg(wort: WortMass | null, read: ReadValues): number | null {
  const originalPlato = read["fermenter.originalExtract"];
  const finalPlato = read["fermenter.finalExtract"];
  if (wort === null || originalPlato === undefined || finalPlato === undefined) return null;
  return residualExtractKg(wort, { originalPlato, finalPlato });
}

/**
 * Weighs the real extract that yeast leaves of a wort.
 *
 * @returns Mass, kg; null where the two extracts cannot be of one beer.
 * @source Balling (docs/sources.md#balling-1865)
 */
export function residualExtractKg(
  wort: WortMass,
  { originalPlato, finalPlato }: { readonly originalPlato: number; readonly finalPlato: number },
): number | null {
  const extracts = measuredExtracts({
    "fermenter.originalExtract": originalPlato,
    "fermenter.finalExtract": finalPlato,
  });
  if (extracts === null) return null;
  const beerKg = (100 * wort.kg) / (100 + CO2_AND_YEAST_PER_ALCOHOL * alcoholByWeight(extracts));
  return (realExtract(extracts) * beerKg) / 100;
}
