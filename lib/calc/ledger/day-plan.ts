import { WATER_HEAT_CAPACITY } from "../heat";
import { GRAIN_DISPLACEMENT } from "../mash";
import type { Ambient, Equipment } from "./equipment";
import type { GristSums } from "./grist-sums";
import { HANDLING } from "./handling";
import { coolWort, type Cooling } from "./cooling";
import { heatMash, heatToBoil, heatWater, type Heating } from "./heating";
import type { KettleHeat } from "./kettle-heat";
import type { Phase, PhaseName } from "./ledger";
import { waterL, type Masses } from "./mass-balance";
import { mashWaters, type MashWaters } from "./mash-steps";
import type { Recipe } from "./recipe";
import { postBoilLitres, runOffLitres } from "./volumes";

export interface DayPlan {
  readonly phases: readonly Phase[];
  readonly waters: MashWaters;
  readonly strikeHeating: Heating;
  readonly mashMin: number | null;
  readonly boilHeating: Heating;
  readonly cooling: Cooling;
  /** Electricity, kWh; null when a heating stalls. */
  readonly energyKWh: number | null;
}

/**
 * Lays the brew day out in time.
 *
 * @returns Phases with start, length, temperatures and power, and the heating and cooling runs behind them.
 * @source Energy balance (docs/sources.md#energy-balance); handling times are common practice
 */
export function planDay(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly sums: GristSums;
  readonly masses: Masses;
  readonly heat: KettleHeat;
}): DayPlan {
  const { recipe, equipment, ambient, masses, heat } = a;
  const clock = new Clock();
  const one = oneMash(a);
  const waters = mashWaters({
    steps: recipe.mash,
    mashWaterKg: one.masses.mashWaterKg,
    gristKg: one.sums.gristKg,
    equipment,
    ambient,
    boilC: heat.boilC,
  });
  const strikeC = Math.min(waters.strikeC ?? heat.boilC, heat.boilC);
  const strikeKg = Math.max(0, waters.strikeKg);

  clock.add("prepare", HANDLING.prepareMin, ambient.tapWater, ambient.tapWater, waterL(strikeKg), 0);
  const strikeHeating = heatWater(a, strikeKg, strikeC);
  const { heatings, mashMin, kettleC } = addMashes(clock, one, strikeHeating, strikeC, strikeKg);
  const boilHeating = heatToBoil(a, kettleC);
  heatings.push(boilHeating);
  clock.heat("heat to the boil", boilHeating, kettleC, heat.boilC, runOffLitres(masses, kettleC), a);
  const boilPowerW = Math.min(heat.electricW, heat.boilHeatW / equipment.kettle.heatShare.value);
  clock.add("boil", recipe.boil, heat.boilC, heat.boilC, postBoilLitres(masses, heat.boilC), boilPowerW);
  const cooling = coolWort(a);
  addCooling(clock, a, cooling);

  const stalled = heatings.some((heating) => !heating.ok);
  const spargeKWh = (masses.spargeKg * WATER_HEAT_CAPACITY * Math.max(0, HANDLING.spargeC - ambient.tapWater)) / 3.6e6;
  return {
    phases: clock.phases,
    waters,
    strikeHeating,
    mashMin: stalled ? null : mashMin,
    boilHeating,
    cooling,
    energyKWh: stalled ? null : clock.energyKWh() + spargeKWh,
  };
}

/** Every mash in turn, each with its own strike water. */
function addMashes(
  clock: Clock,
  one: DayInput,
  strikeHeating: Heating,
  strikeC: number,
  strikeKg: number,
): { readonly heatings: Heating[]; readonly mashMin: number; readonly kettleC: number } {
  const heatings: Heating[] = [strikeHeating];
  let mashMin = 0;
  let kettleC = strikeC;
  for (let mash = 0; mash < one.recipe.mashes; mash++) {
    clock.heat("heat strike water", strikeHeating, one.ambient.tapWater, strikeC, waterL(strikeKg), one);
    const mashed = addMash(clock, one, strikeC);
    heatings.push(...mashed.heatings);
    mashMin += mashed.minutes;
    kettleC = addLauter(clock, one, mashed.lastC);
  }
  return { heatings, mashMin, kettleC };
}

/** The share of one of the equal mashes. */
function oneMash(a: DayInput): DayInput {
  const parts = a.recipe.mashes;
  if (parts === 1) return a;
  const { sums, masses } = a;
  return {
    ...a,
    sums: { ...sums, gristKg: sums.gristKg / parts },
    masses: {
      ...masses,
      mashWaterKg: masses.mashWaterKg / parts,
      spargeKg: masses.spargeKg / parts,
      runOffKg: masses.runOffKg / parts,
      runOffExtractKg: masses.runOffExtractKg / parts,
    },
  };
}

type DayInput = Parameters<typeof planDay>[0];

/** Lines phases up one after the other. */
class Clock {
  readonly phases: Phase[] = [];
  private now = 0;

  add(name: PhaseName, minutes: number, fromC: number, toC: number, litres: number, powerW: number): void {
    this.phases.push({ name, startMin: this.now, minutes, fromC, toC, litres, powerW });
    this.now += minutes;
  }

  heat(name: PhaseName, heating: Heating, fromC: number, toC: number, litres: number, a: DayInput): void {
    if (heating.ok) this.add(name, heating.minutes, fromC, toC, litres, a.heat.electricW);
    else this.add(name, 0, fromC, heating.ceilingC, litres, a.heat.electricW);
  }

  energyKWh(): number {
    return this.phases.reduce((sum, phase) => sum + (phase.powerW * phase.minutes) / 60_000, 0);
  }
}

function addMash(
  clock: Clock,
  a: DayInput,
  strikeC: number,
): { readonly minutes: number; readonly lastC: number; readonly heatings: readonly Heating[] } {
  const { recipe, equipment, ambient, sums, masses } = a;
  const litres = waterL(masses.mashWaterKg) + GRAIN_DISPLACEMENT * sums.gristKg;
  const heatings: Heating[] = [];
  let lastC: number = recipe.mash[0]?.celsius ?? strikeC;
  let minutes = 0;
  clock.add("dough in", HANDLING.doughInMin, strikeC, lastC, litres, 0);
  for (const step of recipe.mash) {
    if (step.celsius > lastC && equipment.mash.heated) {
      const heating = heatMash(a, lastC, step.celsius);
      clock.heat("heat between rests", heating, lastC, step.celsius, litres, a);
      heatings.push(heating);
      if (heating.ok) minutes += heating.minutes;
    }
    lastC = step.celsius;
    const holdW = equipment.mash.heated
      ? (equipment.mash.lossCoefficient * Math.max(0, lastC - ambient.air)) / equipment.kettle.heatShare.value
      : 0;
    clock.add("rest", step.minutes, lastC, lastC, litres, Math.min(holdW, a.heat.electricW));
    minutes += step.minutes;
  }
  return { minutes, lastC, heatings };
}

/** Drains and sparges; returns the temperature of the wort in the kettle. */
function addLauter(clock: Clock, a: DayInput, mashC: number): number {
  const { equipment, masses } = a;
  const { method } = equipment.lauter;
  clock.add("lift and drain", HANDLING.drainMin, mashC, mashC, runOffLitres(masses, mashC), 0);
  if (method === "none" || masses.spargeKg <= 0) return mashC;
  const minutes = {
    batch: HANDLING.batchSpargeMin,
    continuous: HANDLING.continuousSpargeMin,
    "pour-over": HANDLING.pourOverSpargeMin,
  }[method];
  const firstKg = Math.max(0, masses.runOffKg - masses.spargeKg);
  const mixedC = (firstKg * mashC + masses.spargeKg * HANDLING.spargeC) / (firstKg + masses.spargeKg);
  clock.add("sparge", minutes, mashC, mixedC, waterL(masses.spargeKg), 0);
  return mixedC;
}

function addCooling(clock: Clock, a: DayInput, cooling: Cooling): void {
  const { recipe, masses, heat } = a;
  const litres = postBoilLitres(masses, heat.boilC);
  if (recipe.stand !== null) {
    clock.add("cool to the stand", cooling.toStandMin, heat.boilC, cooling.standC, litres, 0);
    clock.add("stand", recipe.stand.minutes, cooling.standC, cooling.standEndC, litres, 0);
  }
  clock.add("chill", cooling.chillMin, cooling.standEndC, cooling.endC, litres, 0);
  clock.add("transfer", HANDLING.transferMin, cooling.endC, cooling.endC, masses.fermenterL, 0);
  clock.add("clean", HANDLING.cleanMin, a.ambient.air, a.ambient.air, 0, 0);
}
