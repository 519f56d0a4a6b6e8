import {
  litres,
  type Celsius,
  type DegreesPlato,
  type JoulesPerKelvin,
  type Kilograms,
  type Litres,
  type LitresPerMinute,
  type Seconds,
  type WattsPerKelvin,
} from "../units";

/** Wort that is cooled, and what cools it. */
export interface Chill {
  /**
   * `immersion`: a coil in the kettle; `counterflow`: the wort leaves through an exchanger; `ice bath`: the vessel
   * stands in melting ice; `none`: the air alone.
   */
  readonly kind: "immersion" | "counterflow" | "ice bath" | "none";
  readonly massKg: Kilograms;
  readonly plato: DegreesPlato;
  readonly vesselHeatCapacity: JoulesPerKelvin;
  /** Conductance between wort and coolant, or between wort and ice. */
  readonly conductance: WattsPerKelvin;
  readonly coolantFlow: LitresPerMinute;
  readonly coolantC: Celsius;
  readonly lossCoefficient: WattsPerKelvin;
  readonly ambientC: Celsius;
  readonly fromC: Celsius;
  readonly toC: Celsius;
}

/** Years of chilling and lakes of coolant are no chilling. */
export const LONGEST_CHILL_MIN = 100_000;
export const MOST_COOLANT_L = litres.range.max;

export type TemperatureCurve = readonly (readonly [minute: number, celsius: number])[];

export type ChillOutcome =
  | {
      readonly ok: true;
      readonly seconds: Seconds;
      /** Cooling water used, or ice melted. */
      readonly coolantLitres: Litres;
      /** Mean temperature of all the wort. */
      readonly curve: TemperatureCurve;
      /** Temperature of the wort as hops see it: of the share that leaves half way, where wort leaves hot. */
      readonly wortCurve: TemperatureCurve;
    }
  | {
      readonly ok: false;
      readonly reason: "coolant-too-warm";
      /** Temperature that the wort would come to. */
      readonly floorC: Celsius;
    };
