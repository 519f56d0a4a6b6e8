import type {
  Celsius,
  DegreesPlato,
  JoulesPerKelvin,
  Kilograms,
  Litres,
  LitresPerMinute,
  Seconds,
  WattsPerKelvin,
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
