import { OutOfRangeError } from "@/lib/calc/errors";
import {
  commissionBoilOff,
  commissionChill,
  commissionCounterflow,
  commissionDeadSpace,
  commissionHeating,
  dipStick,
  type BoilOffTrial,
  type ChillTrial,
  type ChillTrialInput,
  type CounterflowRun,
  type CounterflowTrial,
  type DeadSpaceTrial,
  type DipStick,
  type HeatingRun,
  type HeatingTrial,
  type Stated,
} from "@/lib/calc/learn";
import type { Equipment } from "@/lib/calc/ledger";
import { celsius, kilograms, litresPerMinute, type JoulesPerKelvin, type WattsPerKelvin } from "@/lib/calc/units";
import { boilOffRun, boilsAt, chillRun, counterflowRuns, heatingRun, leftBehind, pours } from "./run-inputs";
import type { TrialPart } from "./trial-entry";
import type { TrialRun } from "./trial-log";

/** Where water stays behind: under the tap of the kettle, in chiller, pump and hoses, or under the grain. */
export type DeadSpaceWhere = "kettle" | "transfer" | "mash";

/** What the readings of a part come to. */
export interface PartResult<T> {
  /** A number that no formula takes is said as it is; the outcome is then missing. */
  readonly outcome: T | null;
  readonly problem: string | null;
  readonly runs: readonly TrialRun[];
  /** How many readings it rests on. */
  readonly count: number;
}

export interface TrialResults {
  /** Heating and cooling, fitted together. */
  readonly heating: PartResult<HeatingTrial> | null;
  readonly boilOff: PartResult<BoilOffTrial> | null;
  readonly chill: PartResult<ChillTrial | CounterflowTrial> | null;
  readonly deadSpace: Readonly<Partial<Record<DeadSpaceWhere, PartResult<DeadSpaceTrial>>>>;
  /** The last run alone: one table is not mixed with another. */
  readonly marks: PartResult<DipStick> | null;
}

/** The heat capacity of a vessel by its weight is good to a fifth. Common practice, no source. */
const VESSEL_SHARE = 0.2;
/** A run says something of its own from here on. */
const ENOUGH = 3;

/** Computes everything that a trial tells so far; in the browser with each reading, and on the server before it counts. */
export function trialResults(runs: readonly TrialRun[], equipment: Equipment): TrialResults {
  const of = (...parts: readonly TrialPart[]): readonly TrialRun[] =>
    runs.filter(({ part, readings }) => parts.includes(part) && readings.length > 0);
  const heating = heatingResult(of("heating", "cooling"), equipment);
  const boilOff = withEnough(of("boil-off"), 2);
  const marks = of("marks")
    .toSorted((a, b) => a.run - b.run)
    .at(-1);
  return {
    heating,
    boilOff:
      boilOff.length === 0
        ? null
        : result(boilOff, () => commissionBoilOff({ runs: boilOff.map(boilOffRun), boilingC: boilsAt(equipment) })),
    chill: chillResult(of("chill"), equipment, heating?.outcome ?? null),
    deadSpace: deadSpaceResults(of("dead space")),
    marks: marks === undefined ? null : result([marks], () => dipStick({ unit: unitOf(marks), pours: pours(marks) })),
  };
}

/** The table's unit; millimetres until somebody says otherwise. */
export function unitOf(run: TrialRun): "mm" | "mark" {
  const stated = run.conditions?.entry;
  return stated?.kind === "conditions" && stated.part === "marks" ? stated.payload.unit : "mm";
}

/** Where the water of a run stayed behind; in the kettle until somebody says otherwise. */
export function whereOf(run: TrialRun): DeadSpaceWhere {
  const stated = run.conditions?.entry;
  return stated?.kind === "conditions" && stated.part === "dead space" ? stated.payload.where : "kettle";
}

function heatingResult(runs: readonly TrialRun[], equipment: Equipment): TrialResults["heating"] {
  const stated = runs.filter((run) => heatingRun(run, equipment) !== null);
  if (stated.length === 0) return null;
  const enough = withEnough(stated, ENOUGH);
  return result(enough, () =>
    commissionHeating({
      runs: enough.map((run) => heatingRun(run, equipment)).filter((run): run is HeatingRun => run !== null),
      boilingC: boilsAt(equipment),
      vesselHeatCapacity: statedVessel(equipment),
    }),
  );
}

/** What is known of the vessel before a trial. */
export function statedVessel({ kettle }: Equipment): Stated<JoulesPerKelvin> {
  return { value: kettle.heatCapacity, sd: VESSEL_SHARE * kettle.heatCapacity };
}

/** A run that has only begun does not hold back what the others tell. */
function withEnough(runs: readonly TrialRun[], least: number): readonly TrialRun[] {
  const enough = runs.filter(({ readings }) => readings.length >= least);
  return enough.length === 0 ? runs.slice(0, 1) : enough;
}

function chillResult(
  runs: readonly TrialRun[],
  equipment: Equipment,
  heating: HeatingTrial | null,
): TrialResults["chill"] {
  const { kind } = equipment.chiller;
  if (kind === "none") return null;
  if (kind === "counterflow") {
    const through = runs.flatMap((run) => counterflowRuns(run));
    const last = through.at(-1);
    return last === undefined ? null : result(runs, () => joinCounterflow(through, last));
  }
  const stated = withEnough(
    runs.filter((run) => chillRun(run) !== null),
    ENOUGH,
  );
  if (stated.length === 0) return null;
  return result(stated, () =>
    commissionChill({
      kind,
      ...chillBasis(equipment, heating),
      runs: stated.map(chillRun).filter((run) => run !== null),
    }),
  );
}

/** What the same trial found of the vessel is better than what the profile says. */
export function chillBasis(
  equipment: Equipment,
  heating: HeatingTrial | null,
): Pick<ChillTrialInput, "vesselHeatCapacity" | "lossCoefficient"> {
  const { lossCoefficient } = equipment.kettle;
  const found = heating?.ok === true ? heating : null;
  const vessel = found?.vesselHeatCapacity ?? null;
  const loss: Stated<WattsPerKelvin> =
    found === null
      ? { value: lossCoefficient.value, sd: lossCoefficient.sd }
      : { value: found.lossCoefficient.value, sd: found.lossCoefficient.standardError };
  return {
    vesselHeatCapacity: vessel === null ? statedVessel(equipment) : { value: vessel.value, sd: vessel.standardError },
    lossCoefficient: loss,
  };
}

/** Several runs through a counterflow chiller count together, as one with the means of what was read. */
function joinCounterflow(runs: readonly CounterflowRun[], last: CounterflowRun): CounterflowTrial {
  if (runs.length === 1) return commissionCounterflow(last);
  const mean = <Q extends number>(of: (run: CounterflowRun) => Stated<Q>, make: (value: number) => Q): Stated<Q> => {
    const sum = runs.reduce((total, run) => total + of(run).value, 0);
    const variance = runs.reduce((total, run) => total + of(run).sd ** 2, 0);
    return { value: make(sum / runs.length), sd: Math.sqrt(variance) / runs.length };
  };
  return commissionCounterflow({
    water: mean((run) => run.water, kilograms),
    seconds: runs.reduce((sum, run) => sum + run.seconds, 0) / runs.length,
    hotC: mean((run) => run.hotC, celsius),
    outC: mean((run) => run.outC, celsius),
    coolantC: mean((run) => run.coolantC, celsius),
    coolantFlow: mean((run) => run.coolantFlow, litresPerMinute),
  });
}

function deadSpaceResults(runs: readonly TrialRun[]): TrialResults["deadSpace"] {
  const found: Partial<Record<DeadSpaceWhere, PartResult<DeadSpaceTrial>>> = {};
  for (const where of ["kettle", "transfer", "mash"] as const) {
    const here = runs.filter((run) => whereOf(run) === where);
    if (here.length > 0) found[where] = result(here, () => commissionDeadSpace({ readings: here.flatMap(leftBehind) }));
  }
  return found;
}

function result<T>(runs: readonly TrialRun[], compute: () => T): PartResult<T> {
  const count = runs.reduce((sum, { readings }) => sum + readings.length, 0);
  try {
    return { outcome: compute(), problem: null, runs, count };
  } catch (error) {
    if (!(error instanceof OutOfRangeError)) throw error;
    return { outcome: null, problem: error.message, runs, count };
  }
}
