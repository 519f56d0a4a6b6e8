import { MEASURABLE } from "@/lib/calc/compare";
import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";
import type { Step } from "@/lib/calc/runsheet";
import { MEASURABLE_IDS, readingRange, type MeasurableId } from "@/lib/model/reading";
import type { BrewPlan } from "@/lib/model/brew-plan";
import type { MeasuringPoint } from "./reading-draft";
import type { VolumeReading } from "./read-volume";
import { instrumentsFor } from "./reading-instruments";

function isMeasurable(id: QuantityId): id is MeasurableId {
  return MEASURABLE_IDS.some((each) => each === id);
}

/** What the plan expects at one measuring point, and how well it is usually measured. */
export function measuringPoint(quantity: MeasurableId, plan: BrewPlan | null): MeasuringPoint {
  const { label, dimension } = QUANTITIES[quantity];
  const value = plan?.ledger.quantities[quantity] ?? null;
  const interval = plan?.intervals[quantity] ?? null;
  const expected = value === null ? null : { value, interval };
  const usualSd = MEASURABLE[quantity].typicalSd;
  const { min, max } = readingRange(quantity);
  const instruments = instrumentsFor(quantity);
  const volume = volumeReading(quantity, plan);
  return { quantity, label, dimension, expected, usualSd, range: { min, max }, instruments, volume };
}

/** Volumes in the kettle are those at the boil; cold ones are read as they are. */
function volumeReading(quantity: MeasurableId, plan: BrewPlan | null): VolumeReading | null {
  if (plan === null || (quantity !== "kettle.preBoil" && quantity !== "kettle.postBoil")) return null;
  const { quantities } = plan.ledger;
  const referenceC = quantities["kettle.boilingPoint"];
  if (referenceC === null) return null;
  const plato = quantities[quantity === "kettle.preBoil" ? "kettle.preBoilGravity" : "kettle.postBoilGravity"] ?? 0;
  return { referenceC, plato, dipStick: plan.dipStick };
}

/** What is measured at a step. */
export function pointsOfStep({ measure }: Step, plan: BrewPlan | null): readonly MeasuringPoint[] {
  return measure.filter(isMeasurable).map((quantity) => measuringPoint(quantity, plan));
}

/** What is measured after the brew day, or at no step of this sheet; only what the plan has a number for. */
export function pointsOutsideSteps(steps: readonly Step[], plan: BrewPlan | null): readonly MeasuringPoint[] {
  const atSteps = new Set(steps.flatMap((step) => step.measure));
  return MEASURABLE_IDS.filter((quantity) => !atSteps.has(quantity))
    .map((quantity) => measuringPoint(quantity, plan))
    .filter(({ expected }) => expected !== null);
}
