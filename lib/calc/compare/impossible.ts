import { MOST_ATTENUATION } from "../alcohol";
import type { MeasurableQuantity } from "./measurable";
import { measuredWort } from "./measured-wort";
import type { PlannedBrew } from "./planned-brew";
import type { Readings, ReadValues } from "./latest-readings";
import { propagate } from "./propagate";

/** Something that cannot happen, and would have if these readings were taken as they stand. */
export interface Impossibility {
  readonly readings: readonly MeasurableQuantity[];
  readonly words: string;
  /** By how much it would have happened; null where the readings do not tell. */
  readonly by: (plan: PlannedBrew, read: ReadValues) => number | null;
}

const less = (a: number | null | undefined, b: number | null | undefined): number | null =>
  a === null || a === undefined || b === null || b === undefined ? null : a - b;

/** What beer reads of which nothing is left but alcohol and water, °P. */
const driest = (original: number | undefined): number | undefined =>
  original === undefined ? undefined : original * (1 - MOST_ATTENUATION);

const IMPOSSIBILITIES: readonly Impossibility[] = [
  {
    readings: ["kettle.preBoilGravity", "fermenter.originalExtract"],
    words: "Taken as read, the gravity would have fallen during the boil.",
    by: (plan, read) =>
      plan.topUpKg > 0 ? null : less(read["kettle.preBoilGravity"], read["fermenter.originalExtract"]),
  },
  {
    readings: ["kettle.preBoil", "kettle.preBoilGravity", "kettle.postBoil", "fermenter.originalExtract"],
    words: "Taken as read, there would have been more wort at the end of the boil than before it.",
    by: (plan, read) => {
      const { beforeBoil, endOfBoil } = measuredWort(plan, read);
      return less(endOfBoil?.kg, beforeBoil === null ? null : beforeBoil.kg + plan.addedKg);
    },
  },
  {
    readings: ["kettle.preBoil", "kettle.preBoilGravity", "kettle.postBoil", "fermenter.originalExtract"],
    words: "Taken as read, extract would have grown during the boil.",
    by: (plan, read) => {
      const { beforeBoil, endOfBoil } = measuredWort(plan, read);
      return less(endOfBoil?.extractKg, beforeBoil === null ? null : beforeBoil.extractKg + plan.addedExtractKg);
    },
  },
  {
    readings: ["kettle.preBoil", "kettle.preBoilGravity"],
    words: "Taken as read, more extract would have run off than the grist holds.",
    by: (plan, read) => less(measuredWort(plan, read).beforeBoil?.extractKg, plan.potentialKg),
  },
  {
    readings: ["kettle.postBoil", "fermenter.volume", "fermenter.originalExtract"],
    words: "Taken as read, more wort would have reached the fermenter than stood in the kettle.",
    by: (plan, read) => {
      const { endOfBoil, fermenter } = measuredWort(plan, read);
      return less(fermenter === null ? null : fermenter.kg - plan.topUpKg, endOfBoil?.kg);
    },
  },
  {
    readings: ["fermenter.volume", "package.volume"],
    words: "Taken as read, more beer would have been packaged than was in the fermenter.",
    by: (plan, read) => {
      const wortL = read["fermenter.volume"];
      return less(read["package.volume"], wortL === undefined ? null : wortL * plan.beerPerWort);
    },
  },
  {
    readings: ["fermenter.originalExtract", "fermenter.finalExtract"],
    words: "Taken as read, the beer would hold more extract than its wort did.",
    by: (_, read) => less(read["fermenter.finalExtract"], read["fermenter.originalExtract"]),
  },
  {
    readings: ["fermenter.originalExtract", "fermenter.finalExtract"],
    words: "Taken as read, more would have fermented than the wort held.",
    by: (_, read) => less(driest(read["fermenter.originalExtract"]), read["fermenter.finalExtract"]),
  },
];

/** Further than chance would go once in a hundred times, in standard uncertainties. */
const BEYOND = 2.5758;

/**
 * Lists what cannot have happened although the readings say so beyond their combined uncertainties.
 *
 * @returns Impossibilities, in the order of the process.
 */
export function impossibilities(plan: PlannedBrew, readings: Readings): Impossibility[] {
  return IMPOSSIBILITIES.filter(({ by }) => {
    const excess = propagate(readings, (read) => by(plan, read));
    return excess !== null && excess.value > BEYOND * excess.sd;
  });
}
