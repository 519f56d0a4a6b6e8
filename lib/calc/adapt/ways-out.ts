import { WEIGHT, type Misfit } from "./attempt";
import type { WayOut } from "./intention";
import {
  fewerRests,
  gentlerSteps,
  longerBoil,
  maltExtract,
  thickerMash,
  thinnerMash,
  twoMashes,
  withFirstRest,
} from "./ways-of-mash";
import { lessVolume, moreVolume, splitBatch, waterAfterTheBoil } from "./ways-of-volume";

/** Fewer than these, and changes are tried two at a time. */
const ENOUGH_WAYS = 3;

const WAYS = [
  lessVolume,
  moreVolume,
  waterAfterTheBoil,
  maltExtract,
  thickerMash,
  thinnerMash,
  fewerRests,
  gentlerSteps,
  twoMashes,
  longerBoil,
  splitBatch,
] as const;

/**
 * Searches the ways out of a brew that does not fit.
 *
 * @returns Those that keep every limit, each with its recipe and ledger, the nearest to the intention first.
 * @source Limits as stated in the equipment profile; weights of the ranking are a decision of this project
 */
export function waysOut(misfit: Misfit): WayOut[] {
  const single = search(misfit);
  const ways = single.length < ENOUGH_WAYS ? [...single, ...withFewerRests(misfit)] : single;
  return ways.sort((one, other) => one.distance - other.distance);
}

function search(misfit: Misfit): WayOut[] {
  return WAYS.map((find) => find(misfit)).filter((way) => way !== null);
}

/** For a tun that can neither hold the mash nor be heated to the later rests: the first rest alone, and one change more. */
function withFewerRests(misfit: Misfit): WayOut[] {
  const dropped = misfit.intention.mash.length - 1;
  if (dropped < 1 || !misfit.reasons.some((limit) => limit.id === "mash steps")) return [];
  const reasons = misfit.reasons.filter((limit) => limit.id !== "mash steps");
  if (reasons.length === 0) return [];
  return search({ ...misfit, reasons, intention: withFirstRest(misfit.intention) }).map((way) => ({
    ...way,
    also: "fewer rests",
    distance: way.distance + WEIGHT.droppedRest * dropped,
  }));
}
