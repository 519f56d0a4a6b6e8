import { QUANTITIES, QUANTITY_IDS, type Interval, type QuantityId, type Station } from "../ledger";
import { DERIVED_QUANTITIES, derivedQuantity, type DerivedQuantity } from "./derived-quantities";
import { halfWidth80 } from "./expectation";
import type { Readings } from "./latest-readings";
import { MEASURABLE_QUANTITIES, type MeasurableQuantity } from "./measurable";
import type { PlannedBrew } from "./planned-brew";
import { propagate, type Measured } from "./propagate";
import type { ReconciledQuantity } from "./reconciled-quantities";
import { meterEnergy } from "./meter-energy";
import type { ComparisonInput, SettledReadings } from "./settle-readings";

/** What a meter tells, and no balance. */
export type MeteredQuantity = "day.energy";

/** One number, planned and measured. Values are in the ledger's units. */
export interface ComparedRow {
  readonly quantity: MeasurableQuantity | DerivedQuantity | MeteredQuantity;
  readonly station: Station;
  /** Computed from readings rather than read. */
  readonly derived: boolean;
  readonly planned: number;
  /** null where the planned value was decided, not predicted. */
  readonly interval: Interval | null;
  readonly measured: number | null;
  /** Standard uncertainty of the measured value. */
  readonly measuredSd: number | null;
  readonly difference: number | null;
  /** Whether the difference lies within the 80 % interval of the prediction and the reading's uncertainty together. */
  readonly expectation: "inside" | "outside" | null;
  /** What the balances of all readings make of this one; for a suspect, what it should have been. */
  readonly reconciled: number | null;
  readonly reconciledSd: number | null;
}

/**
 * Sets planned and measured side by side.
 *
 * @returns A row for each number that can be measured or follows from readings and that the plan has a value for.
 */
export function comparedRows(
  { input, plan, readings, found }: SettledReadings,
  reconciled: readonly ReconciledQuantity[],
): ComparedRow[] {
  return QUANTITY_IDS.flatMap((id): ComparedRow[] => {
    const planned = input.ledger.quantities[id];
    if (planned === null || !isCompared(id)) return [];
    const measured = measuredValue(id, plan, readings);
    const settled = reconciled.find((each) => each.quantity === id && each.measured !== null);
    const doubted = found.suspects.find(({ quantity }) => quantity === id);
    const row = rowOf(id, planned, input.intervals[id] ?? null, measured);
    return [
      {
        ...row,
        reconciled: settled?.reconciled ?? doubted?.shouldBe ?? null,
        reconciledSd: settled?.reconciledSd ?? doubted?.shouldBeSd ?? null,
      },
    ];
  });
}

const DERIVED: ReadonlySet<QuantityId> = new Set<QuantityId>(DERIVED_QUANTITIES);
const COMPARED: ReadonlySet<QuantityId> = new Set<QuantityId>([...MEASURABLE_QUANTITIES, ...DERIVED_QUANTITIES]);

function isCompared(id: QuantityId): id is MeasurableQuantity | DerivedQuantity {
  return COMPARED.has(id);
}

function isDerived(id: QuantityId): id is DerivedQuantity {
  return DERIVED.has(id);
}

function measuredValue(
  id: MeasurableQuantity | DerivedQuantity,
  plan: PlannedBrew,
  readings: Readings,
): Measured | null {
  if (isDerived(id)) return propagate(readings, (read) => derivedQuantity(id, plan, read));
  return readings.get(id) ?? null;
}

/**
 * The electricity of the day beside its plan; where the meter gives no answer there is nothing measured.
 *
 * @returns The row; nothing where nobody read a meter, or the plan has no such number.
 */
export function meteredRows({ ledger, intervals, meter = [] }: ComparisonInput): ComparedRow[] {
  const planned = ledger.quantities["day.energy"];
  if (planned === null || meter.length === 0) return [];
  const energy = meterEnergy(meter);
  const measured = energy.ok ? { value: energy.kWh, sd: energy.sd } : null;
  const row = rowOf("day.energy", planned, intervals["day.energy"] ?? null, measured);
  return [{ ...row, derived: true, reconciled: null, reconciledSd: null }];
}

function rowOf(
  quantity: ComparedRow["quantity"],
  planned: number,
  interval: Interval | null,
  measured: Measured | null,
): Omit<ComparedRow, "reconciled" | "reconciledSd"> {
  const { station } = QUANTITIES[quantity];
  const fixed = { quantity, station, derived: isDerived(quantity), planned, interval };
  if (measured === null) return { ...fixed, measured: null, measuredSd: null, difference: null, expectation: null };
  const difference = measured.value - planned;
  return {
    ...fixed,
    measured: measured.value,
    measuredSd: measured.sd,
    difference,
    expectation: Math.abs(difference) <= halfWidth80(interval, measured.sd) ? "inside" : "outside",
  };
}
