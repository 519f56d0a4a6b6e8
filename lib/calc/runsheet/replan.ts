import type { Step } from "./step";

/** What really happened to a step; minutes count from the start of the day. */
export interface StepRecord {
  /** Id of the step. */
  readonly step: string;
  /** null when it was left out. */
  readonly startMin: number | null;
  /** null while it is going on. */
  readonly endMin: number | null;
}

/** A temperature read in the vessel that is heating now. */
export interface RampReading {
  readonly atMin: number;
  readonly celsius: number;
}

/** Relative standard uncertainty of the lengths of steps. */
export interface Spread {
  /** Of all heating of one day together: power, supply and losses are off in one direction. */
  readonly heating: number;
  /** Of all chilling of one day together. */
  readonly cooling: number;
  /** Of each piece of handwork on its own. */
  readonly hands: number;
}

/** A moment with its 80 % interval, minutes from the start of the day. */
export interface ExpectedTime {
  readonly min: number;
  readonly low80: number;
  readonly high80: number;
}

/** `overdue`: it should be over by now; `late`: an addition that should be in by now and can still go in. */
export type StepState = "to come" | "running" | "overdue" | "late";

/** A step that is not over, with its new time. */
export interface ReplannedStep extends Step {
  readonly state: StepState;
  readonly start: ExpectedTime;
  readonly end: ExpectedTime;
}

/** An addition that is not in although its time is over. */
export interface MissedAddition {
  readonly step: string;
  readonly names: readonly string[];
  readonly dueMin: number;
  /** Nothing has begun yet that comes after; it can still go in, for less bitterness. */
  readonly possible: boolean;
}

export type Replan =
  | {
      readonly ok: true;
      /** In order of time. */
      readonly steps: readonly ReplannedStep[];
      readonly missed: readonly MissedAddition[];
      /** Steps without a record that later ones have overtaken. */
      readonly passed: readonly string[];
      /** null when it is pitched, or was left out. */
      readonly pitch: ExpectedTime | null;
      readonly end: ExpectedTime;
      /** How much later than on the sheet the day ends; negative when earlier. */
      readonly behindMin: number;
      /** How long this day's heating takes against the sheet. */
      readonly heatingPace: number;
    }
  | { readonly ok: false; readonly reason: "no-such-step"; readonly step: string }
  | {
      readonly ok: false;
      readonly reason: "not-heating";
      readonly step: string;
      /** The last temperature that was read. */
      readonly celsius: number;
    };
