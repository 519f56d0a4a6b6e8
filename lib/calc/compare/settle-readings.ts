import type { Intervals, Ledger } from "../ledger";
import { balanceVariables, type Variable } from "./balance-variables";
import { findSuspects, type FoundSuspects } from "./find-suspects";
import { latestReadings, type ComparedReading, type Readings } from "./latest-readings";
import type { MeterReading } from "./meter-energy";
import { plannedBrew, type PlannedBrew } from "./planned-brew";
import { settleBrew, type SettledBrew } from "./settle-brew";

/** What a comparison takes: the plan of one kettle and what was read. */
export interface ComparisonInput {
  /** The ledger that was planned for this kettle. */
  readonly ledger: Ledger;
  /** 80 % intervals of its predictions. */
  readonly intervals: Intervals;
  /** Readings in the ledger's units, each with its standard uncertainty, in order of time. */
  readonly readings: readonly ComparedReading[];
  /** Readings of the electricity meter, in order of time. No balance holds them. */
  readonly meter?: readonly MeterReading[];
}

/** A brew after all tests: what is doubted, and where plan and the other readings settle. */
export interface SettledReadings {
  readonly input: ComparisonInput;
  readonly plan: PlannedBrew;
  readonly readings: Readings;
  readonly found: FoundSuspects;
  /** Without the readings that are doubted. */
  readonly counting: readonly Variable[];
  readonly final: ComparedReading | null;
  readonly settled: SettledBrew;
  /** By the plan alone. */
  readonly unread: SettledBrew;
}

/**
 * Tests the readings of a brew and settles it on those that stand.
 *
 * @returns Suspects, and the brew by plan and readings beside the brew by the plan alone.
 * @throws {@link OutOfRangeError} when a reading or its uncertainty is outside its range.
 */
export function settleReadings(input: ComparisonInput): SettledReadings {
  const { ledger, intervals } = input;
  const readings = latestReadings(input.readings);
  const plan = plannedBrew(ledger);
  const variables = balanceVariables({ ledger, intervals, plan, readings });
  const found = findSuspects({ ledger, intervals, plan, readings, variables });
  const doubted = new Set<string>(found.suspects.map(({ quantity }) => quantity));
  const counting = found.remaining.map((each) =>
    each.reading !== null && doubted.has(each.reading) ? { ...each, value: each.planned, sigma: null } : each,
  );
  const read = readings.get("fermenter.finalExtract");
  const final = read === undefined || doubted.has(read.quantity) ? null : read;
  const nothing = balanceVariables({ ledger, intervals, plan, readings: new Map() });
  return {
    input,
    plan,
    readings,
    found,
    counting,
    final,
    settled: settleBrew({ plan, intervals, variables: counting, final }),
    unread: settleBrew({ plan, intervals, variables: nothing, final: null }),
  };
}
