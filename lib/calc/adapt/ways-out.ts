import { WEIGHT, type Misfit } from "./attempt";
import { WAY_OUT_KINDS, type WayOut, type WayOutKind } from "./intention";
import {
  fewerRests,
  gentlerSteps,
  longerBoil,
  maltExtract,
  oneRestInstead,
  sugar,
  thickerMash,
  thinEnoughForSteps,
  thinnerMash,
  twoMashes,
  withFirstRest,
} from "./ways-of-mash";
import { lessVolume, moreVolume, splitBatch, waterAfterTheBoil } from "./ways-of-volume";

/** Fewer than these, and changes are tried two at a time. */
const ENOUGH_WAYS = 3;

const WAYS: Readonly<Record<WayOutKind, (misfit: Misfit) => WayOut | null>> = {
  "less volume": lessVolume,
  "more volume": moreVolume,
  "water after the boil": waterAfterTheBoil,
  "malt extract for part of the grist": maltExtract,
  "sugar for part of the grist": sugar,
  "thicker mash": thickerMash,
  "thinner mash": thinnerMash,
  "fewer rests": fewerRests,
  "gentler steps": gentlerSteps,
  "one rest instead": oneRestInstead,
  "two mashes": twoMashes,
  "longer boil": longerBoil,
  "split batch": splitBatch,
};

/**
 * Searches the ways out of a brew that does not fit.
 *
 * @param misfit - The brew and the limits that it breaks.
 * @param kinds - Which changes to search, each alone; null searches all, and two at a time where few of them do.
 * @returns Those that keep every limit, each with its recipe and ledger, the nearest to the intention first.
 * @source Limits as stated in the equipment profile; weights of the ranking are a decision of this project
 */
export function waysOut(misfit: Misfit, kinds: readonly WayOutKind[] | null): WayOut[] {
  const single = search(misfit, kinds ?? WAY_OUT_KINDS);
  const ways = kinds === null && single.length < ENOUGH_WAYS ? [...single, ...twoChanges(misfit)] : single;
  return ways.sort((one, other) => one.distance - other.distance);
}

function search(misfit: Misfit, kinds: readonly WayOutKind[]): WayOut[] {
  return kinds.map((kind) => WAYS[kind](misfit)).filter((way) => way !== null);
}

/** For a tun that cannot be heated to the later rests, and holds too little for what would help: one change more. */
function twoChanges(misfit: Misfit): WayOut[] {
  if (!misfit.reasons.some((limit) => limit.id === "mash steps")) return [];
  const reasons = misfit.reasons.filter((limit) => limit.id !== "mash steps");
  const dropped = misfit.intention.mash.length - 1;
  const ways: WayOut[] = [];
  if (dropped > 0 && reasons.length > 0) {
    const first = { ...misfit, reasons, intention: withFirstRest(misfit.intention) };
    ways.push(...along(search(first, WAY_OUT_KINDS), "fewer rests", WEIGHT.droppedRest * dropped));
  }
  const thinner = thinEnoughForSteps(misfit);
  if (thinner !== null) {
    const { thickness } = thinner.intention;
    const cost = (WEIGHT.thickness * ((thickness ?? 0) - (misfit.intention.thickness ?? 0))) / (thickness ?? 1);
    ways.push(...along(search({ ...thinner, reasons }, WAY_OUT_KINDS), "thinner mash", cost));
  }
  return ways;
}

function along(ways: readonly WayOut[], also: WayOut["kind"], cost: number): WayOut[] {
  return ways.map((way) => ({ ...way, also, distance: way.distance + cost }));
}
