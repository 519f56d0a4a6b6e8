import { alcoholByVolume, apparentRange, FERMENTED_RANGE } from "../alcohol";
import { degreesPlato } from "../units";
import {
  BREW_FIGURES,
  followBrew,
  plannedFigures,
  type BrewFigureId,
  type BrewFigures,
  type FollowedBrew,
} from "./brew-figures";
import { slopesOf } from "./followed-readings";
import { sdAlong } from "./improve-by-readings";
import { namedRuns, type NamedRun } from "./named-runs";
import { settleReadings, type ComparisonInput, type SettledReadings } from "./settle-readings";
import { shapleyParts } from "./shapley";

/** Where a difference can come from, in the order of the process, with the figures that are substituted for it. */
export const CAUSES = {
  mash: ["dissolvedKg"],
  lauter: ["lauterLostKg"],
  volume: ["water.mash", "spargeL", "retainedKg"],
  boil: ["evaporatedKg"],
  left: ["leftKg"],
  fermentation: ["attenuation"],
} as const satisfies Readonly<Record<string, readonly BrewFigureId[]>>;

export type CauseId = keyof typeof CAUSES;

// The keys of a constant object are what they are; Object.keys only forgets them.
export const CAUSE_IDS = Object.keys(CAUSES) as readonly CauseId[];

/** The numbers whose difference is divided. */
export const CAUSED_QUANTITIES = [
  "fermenter.originalExtract",
  "fermenter.volume",
  "fermenter.finalExtract",
  "package.alcohol",
] as const;
export type CausedQuantity = (typeof CAUSED_QUANTITIES)[number];

/** What one station makes of a difference, in the unit of the quantity. */
export interface CausePart {
  readonly id: CauseId;
  readonly value: number;
  readonly sd: number;
  /** Whether there was more of it than planned: dissolved, left in the grain, in the kettle, boiled off, left, fermented. */
  readonly isMore: boolean;
}

/** One difference from the plan, divided among the stations. */
export interface QuantityCauses {
  readonly quantity: CausedQuantity;
  readonly planned: number;
  /** As read; by the other readings where it is doubted. */
  readonly actual: number;
  readonly actualSd: number;
  readonly isDoubted: boolean;
  readonly difference: number;
  readonly parts: readonly CausePart[];
  /** What is left of the reading when it is reconciled with the others; with the parts it adds up to the difference. */
  readonly reading: number;
  /** Parts, or neighbouring parts together, that the readings can tell from nothing. */
  readonly named: readonly NamedRun<CauseId>[];
}

/**
 * Divides how far a brew came out from its plan among the stations that made it so.
 *
 * The figures that the readings settle on are put in place of the planned ones, station by station, averaged over all
 * orders (Shapley); so the parts add up exactly. Each has the uncertainty that plan and readings leave to its figures. What
 * is less than twice its uncertainty is not named as a cause; neighbours that only their sum tells are named together.
 *
 * @param a.ledger - The ledger that was planned for this kettle.
 * @param a.intervals - 80 % intervals of its predictions.
 * @param a.readings - Readings in the ledger's units, each with its standard uncertainty, in order of time.
 * @returns Original extract, °P, volume into the fermenter, L, final extract, °P, and alcohol, % by volume: those that
 * were read, each with the parts of its difference.
 * @validRange Gravities from 0 to 35 °P, of beer from −9 °P.
 * @throws {@link OutOfRangeError} when a reading or its uncertainty is outside its range.
 * @source Shapley 1953 (docs/sources.md#shapley-1953); mass balances (docs/sources.md#mass-balance)
 * @example
 * const reading = { quantity: "fermenter.volume", value: 18, sd: 0.25 } as const;
 * differenceCauses({ ledger, intervals, readings: [reading] })[0].parts; // [{ id: "mash", value: −0.01, sd: 0.06, … }, …]
 */
export function differenceCauses(a: ComparisonInput): QuantityCauses[] {
  const settled = settleReadings(a);
  const { plan, figures, covariance } = settled.settled;
  const planned = plannedFigures(plan);
  const parts = shapleyParts(CAUSE_IDS.length, (mask) => numbersOf(followBrew(plan, mixed(planned, figures, mask))));
  const slopes = slopesOf(plan, midway(planned, figures), (brew) => numbersOf(brew));
  const best = numbersOf(followBrew(plan, figures));
  const more = isMore(planned, figures);
  return CAUSED_QUANTITIES.flatMap((quantity, k): QuantityCauses[] => {
    const plannedValue = a.ledger.quantities[quantity];
    const read = readValue(settled, quantity, best[k] ?? 0);
    if (plannedValue === null || read === null) return [];
    const sdOf = (ids: readonly CauseId[]): number => sdAlong(slopesWithin(slopes[k] ?? [], ids), covariance);
    const own = CAUSE_IDS.map((id, i): CausePart => ({
      id,
      value: parts[i]?.[k] ?? 0,
      sd: sdOf([id]),
      isMore: more[id],
    }));
    const difference = read.value - plannedValue;
    return [
      {
        quantity,
        planned: plannedValue,
        actual: read.value,
        actualSd: read.sd ?? sdAlong(slopes[k] ?? [], covariance),
        isDoubted: read.isDoubted,
        difference,
        parts: own,
        reading: own.reduce((rest, { value }) => rest - value, difference),
        named: namedRuns(own, sdOf),
      },
    ];
  });
}

function numbersOf({ fermenter, finalPlato }: FollowedBrew): readonly number[] {
  return [fermenter.plato, fermenter.litres, finalPlato, alcoholOf(fermenter.plato, finalPlato)];
}

function alcoholOf(original: number, final: number): number {
  if (!(original >= FERMENTED_RANGE.min && original <= FERMENTED_RANGE.max)) return 0;
  const { min, max } = apparentRange(original);
  if (!(final >= min && final <= max)) return 0;
  return alcoholByVolume({ originalPlato: degreesPlato(original), apparentPlato: degreesPlato(final) });
}

function mixed(planned: BrewFigures, settled: BrewFigures, mask: number): BrewFigures {
  const changed = CAUSE_IDS.filter((_, i) => ((mask >> i) & 1) === 1).flatMap((id) => CAUSES[id]);
  return { ...planned, ...Object.fromEntries(changed.map((id) => [id, settled[id]])) };
}

function midway(planned: BrewFigures, settled: BrewFigures): BrewFigures {
  const half = BREW_FIGURES.map((id) => [id, (planned[id] + settled[id]) / 2] as const);
  return { ...planned, ...Object.fromEntries(half) };
}

function slopesWithin(slopes: readonly number[], ids: readonly CauseId[]): number[] {
  const figures = new Set<BrewFigureId>(ids.flatMap((id) => CAUSES[id]));
  return BREW_FIGURES.map((id, i) => (figures.has(id) ? (slopes[i] ?? 0) : 0));
}

function isMore(planned: BrewFigures, settled: BrewFigures): Readonly<Record<CauseId, boolean>> {
  const by = (id: BrewFigureId): number => settled[id] - planned[id];
  return {
    mash: by("dissolvedKg") > 0,
    lauter: by("lauterLostKg") > 0,
    volume: by("water.mash") + by("spargeL") - by("retainedKg") > 0,
    boil: by("evaporatedKg") > 0,
    left: by("leftKg") > 0,
    fermentation: by("attenuation") > 0,
  };
}

interface ReadValue {
  readonly value: number;
  /** null where it follows from several readings. */
  readonly sd: number | null;
  readonly isDoubted: boolean;
}

/** A doubted reading counts as what the others make of it; what nobody read has no difference to divide. */
function readValue({ readings, found }: SettledReadings, quantity: CausedQuantity, best: number): ReadValue | null {
  const behind =
    quantity === "package.alcohol" ? (["fermenter.originalExtract", "fermenter.finalExtract"] as const) : [quantity];
  const read = behind.map((id) => readings.get(id));
  const [first, second] = read;
  if (first === undefined || read.includes(undefined)) return null;
  const isDoubted = found.suspects.some((each) => behind.some((id) => id === each.quantity));
  if (isDoubted) return { value: best, sd: null, isDoubted };
  if (second !== undefined) return { value: alcoholOf(first.value, second.value), sd: null, isDoubted };
  return { value: first.value, sd: first.sd, isDoubted };
}
