import type { Dimension, QuantityId, Station } from "./quantity-catalogue";

/** A flow of matter into or out of a station. */
export interface Stream {
  readonly name: string;
  readonly kg: number;
  readonly extractKg: number;
}

/** In = lost + out, for mass and for extract; the errors are what rounding leaves. */
export interface StationBalance {
  readonly station: Station;
  readonly in: readonly Stream[];
  readonly lost: readonly Stream[];
  readonly out: readonly Stream[];
  readonly massErrorKg: number;
  readonly extractErrorKg: number;
}

export type PhaseName =
  | "prepare"
  | "heat strike water"
  | "dough in"
  | "rest"
  | "heat between rests"
  | "lift and drain"
  | "sparge"
  | "heat to the boil"
  | "boil"
  | "cool to the stand"
  | "stand"
  | "chill"
  | "transfer"
  | "clean";

/** A stretch of the brew day; minutes count from starting to weigh out. */
export interface Phase {
  readonly name: PhaseName;
  readonly startMin: number;
  readonly minutes: number;
  readonly fromC: number;
  readonly toC: number;
  /** Liquid (or mash) in the vessel that is worked on, at the temperature it begins with; water at 20 °C. */
  readonly litres: number;
  readonly powerW: number;
}

/** What one hop addition gives. */
export interface HopResult {
  readonly ibu: number;
  /** Minutes at 100 °C that isomerise as much as the real curve from the addition to the end of chilling. */
  readonly equivalentMinutes: number;
  readonly utilisation: number;
}

/** What one fermentable gives. */
export interface FermentableResult {
  readonly extractKg: number;
  /** Share of all extract that reaches the kettle. */
  readonly share: number;
  /** Share of the malt colour units. */
  readonly colourShare: number;
}

export const LIMIT_IDS = [
  "grain basket",
  "mash volume",
  "mash thickness",
  "strike water",
  "strike volume",
  "element covered",
  "boil volume",
  "heater reaches the boil",
  "heater holds the boil",
  "mash steps",
  "chilling",
  "fermenter",
  "carbonation",
] as const;
export type LimitId = (typeof LIMIT_IDS)[number];

/** One physical limit of the equipment and where this brew stands against it. */
export interface Limit {
  readonly id: LimitId;
  readonly ok: boolean;
  readonly value: number;
  readonly bound: number;
  readonly side: "at most" | "at least";
  readonly dimension: Dimension;
}

export interface Ledger {
  readonly balances: readonly StationBalance[];
  /** null where reality has no such value; the limits say why. */
  readonly quantities: Readonly<Record<QuantityId, number | null>>;
  readonly fermentables: readonly FermentableResult[];
  readonly hops: readonly HopResult[];
  readonly temperatureCurve: readonly (readonly [minute: number, celsius: number])[];
  readonly phases: readonly Phase[];
  readonly limits: readonly Limit[];
}

export type LedgerOutcome =
  | { readonly ok: true; readonly ledger: Ledger }
  | {
      readonly ok: false;
      readonly reason:
        | "no-fermentable"
        | "no-mash-step"
        | "grain-holds-all-water"
        | "kettle-keeps-all-wort"
        | "too-strong"
        | "too-dark"
        | "too-bitter"
        | "too-salty";
      /** The figure that made it impossible, in the unit of the reason (kg, steps, L, °P, malt colour units or mg/L). */
      readonly value: number;
    };
