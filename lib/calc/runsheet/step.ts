import type { PhaseName, QuantityId } from "../ledger";

/** Something to weigh, pour or add in a step. */
export interface StepAmount {
  readonly name: string;
  readonly value: number;
  readonly unit: "kg" | "g" | "L" | "mL" | "billion cells";
}

export type CautionId =
  "hot liquor" | "hot basket" | "boil-over" | "mains" | "acid" | "cleaner" | "glass" | "pressure" | "closed room";

export type StepName =
  | PhaseName
  | "fill"
  | "weigh out"
  | "hop addition"
  | "hot-break watch"
  | "pitch"
  | "clean"
  /** One that the brewer put in on the day. */
  | "extra";

/** One line of the run sheet. */
export interface Step {
  readonly id: string;
  readonly name: StepName;
  /** From the start of the brew day. */
  readonly startMin: number;
  readonly minutes: number;
  readonly celsius: number | null;
  readonly litres: number | null;
  readonly powerW: number | null;
  readonly amounts: readonly StepAmount[];
  /** What to measure now, by the ledger quantity that it will be compared with. */
  readonly measure: readonly QuantityId[];
  readonly cautions: readonly CautionId[];
}
