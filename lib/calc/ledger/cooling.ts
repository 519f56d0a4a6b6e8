import { chill, restTemperature, wortHeatCapacity } from "../heat";
import { celsius, degreesPlato, joulesPerKelvin, kilograms, minutes } from "../units";
import type { Ambient, Equipment } from "./equipment";
import { HANDLING } from "./handling";
import type { KettleHeat } from "./kettle-heat";
import type { Masses } from "./mass-balance";
import type { Recipe } from "./recipe";

export type Curve = readonly (readonly [minute: number, celsius: number])[];

/** The way of the hot wort from flame-out to the fermenter. Curves begin at minute 0 of their own stretch. */
export interface Cooling {
  readonly toStandMin: number;
  readonly standC: number;
  readonly standEndC: number;
  readonly chillMin: number;
  readonly endC: number;
  readonly coolantL: number;
  /** What the wort lives through on the average; behind a counterflow chiller half of it waits hot. */
  readonly toStand: Curve;
  readonly stand: Curve;
  readonly chill: Curve;
}

interface CoolingInput {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly masses: Masses;
  readonly heat: KettleHeat;
}

const STAND_PIECES = 4;

/**
 * Cools the wort: quickly to the stand, through the stand by the kettle's own loss, and down to pitching temperature.
 *
 * Where the coolant is too warm to pitch with, the chiller stops a few kelvin above it and the fermenter does the rest.
 * A counterflow chiller that cools to a stand runs back into the kettle, which mixes it.
 *
 * @returns Times, temperatures and the curve that hops live through.
 * @source Energy balance (docs/sources.md#energy-balance)
 */
export function coolWort(a: CoolingInput): Cooling {
  const { recipe, heat } = a;
  const wanted = recipe.stand === null ? heat.boilC : Math.min(recipe.stand.celsius, heat.boilC);
  const toStand = runChiller(a, heat.boilC, wanted, true);
  const stand = restCurve(a, toStand.endC, recipe.stand?.minutes ?? 0);
  const standEndC = stand.at(-1)?.[1] ?? toStand.endC;
  const down = runChiller(a, standEndC, Math.max(recipe.yeast.celsius, coldest(a) + HANDLING.chillApproachK), false);
  return {
    toStandMin: toStand.minutes,
    standC: toStand.endC,
    standEndC,
    chillMin: down.minutes,
    endC: down.endC,
    coolantL: toStand.coolantL + down.coolantL,
    toStand: toStand.curve,
    stand,
    chill: down.curve,
  };
}

/** Temperature that the chiller works against. */
function coldest({ equipment, ambient }: CoolingInput): number {
  return equipment.chiller.kind === "none" ? ambient.air : equipment.chiller.coolant;
}

interface Run {
  readonly minutes: number;
  readonly endC: number;
  readonly coolantL: number;
  readonly curve: Curve;
}

const standingStill = (atC: number): Run => ({ minutes: 0, endC: atC, coolantL: 0, curve: [[0, atC]] });

function runChiller(a: CoolingInput, fromC: number, toC: number, mixed: boolean): Run {
  if (toC >= fromC) return standingStill(fromC);
  const chilled = chillTo(a, fromC, toC, mixed);
  if (chilled.ok) {
    return { minutes: chilled.seconds / 60, endC: toC, coolantL: chilled.coolantLitres, curve: chilled.wortCurve };
  }
  // A weak chiller beside a warm room settles higher than its coolant; it is stopped as far above that.
  const reachableC = chilled.floorC + HANDLING.chillApproachK;
  return reachableC >= fromC || reachableC <= toC ? standingStill(fromC) : runChiller(a, fromC, reachableC, mixed);
}

function chillTo(a: CoolingInput, fromC: number, toC: number, mixed: boolean): ReturnType<typeof chill> {
  const { chiller, kettle } = a.equipment;
  return chill({
    kind: mixed && chiller.kind === "counterflow" ? "immersion" : chiller.kind,
    massKg: kilograms(a.masses.postBoilKg),
    plato: platoOf(a.masses),
    vesselHeatCapacity: kettle.heatCapacity,
    conductance: chiller.conductance.value,
    coolantFlow: chiller.coolantFlow,
    coolantC: chiller.coolant,
    lossCoefficient: kettle.lossCoefficient.value,
    ambientC: a.ambient.air,
    fromC: celsius(fromC),
    toC: celsius(toC),
  });
}

const platoOf = (masses: Masses): ReturnType<typeof degreesPlato> =>
  degreesPlato(Math.min(35, (100 * masses.postBoilExtractKg) / masses.postBoilKg));

/** The covered kettle loses heat to the air through the stand. */
function restCurve(a: CoolingInput, fromC: number, standMinutes: number): Curve {
  if (standMinutes === 0) return [[0, fromC]];
  const { kettle } = a.equipment;
  const specificHeat = wortHeatCapacity({ plato: platoOf(a.masses), celsius: celsius(fromC) });
  const rest = {
    fromC: celsius(fromC),
    ambientC: a.ambient.air,
    heatCapacity: joulesPerKelvin(a.masses.postBoilKg * specificHeat + kettle.heatCapacity),
    lossCoefficient: kettle.lossCoefficient.value,
  };
  const ambientC = a.ambient.air;
  const pieceMin = standMinutes / STAND_PIECES;
  const aboveAirK = fromC - ambientC;
  // Newton's law takes the same share off in each piece.
  const share = aboveAirK === 0 ? 1 : (restTemperature({ ...rest, minutes: minutes(pieceMin) }) - ambientC) / aboveAirK;
  const curve: (readonly [number, number])[] = [];
  for (let i = 0, aboveK = aboveAirK; i <= STAND_PIECES; i++, aboveK *= share) {
    // Wort does not get colder than freezing; hops do nothing there.
    curve.push([i * pieceMin, Math.max(0, ambientC + aboveK)]);
  }
  return curve;
}
