import type { DipStickTable } from "../kettle";
import type {
  Celsius,
  Fraction,
  JoulesPerKelvin,
  Kilograms,
  KilogramsPerHour,
  Litres,
  LitresPerKilogram,
  LitresPerMinute,
  Metres,
  SquareMetres,
  Volts,
  Watts,
  WattsPerKelvin,
} from "../units";
import type { FigureCorrelation } from "./figure-correlation";

/** How a figure came to be known. */
export type FigureOrigin = "typical" | "stated" | "measured" | "learned";

/** One figure of a piece of equipment, with how well it is known. */
export interface Figure<Q extends number> {
  readonly value: Q;
  /** Standard uncertainty, in the unit of the value. */
  readonly sd: number;
  readonly from: FigureOrigin;
  /** How many brews or trials it rests on. */
  readonly count: number;
  /** In words, what it was measured by; left out where nobody said. */
  readonly basis?: string;
}

export interface Kettle {
  readonly capacity: Litres;
  /** Kept free above the boiling wort. */
  readonly headspace: Litres;
  /** Least liquid that covers the element. */
  readonly minimum: Litres;
  readonly openArea: SquareMetres;
  /** Covered while it heats, so that nothing evaporates before the boil. */
  readonly lid: boolean;
  readonly heatCapacity: JoulesPerKelvin;
  readonly ratedPower: Watts;
  readonly ratedVoltage: Volts;
  readonly supplyVoltage: Volts;
  /** Share of the electrical power that reaches the liquid. */
  readonly heatShare: Figure<Fraction>;
  readonly lossCoefficient: Figure<WattsPerKelvin>;
  readonly boilOff: Figure<KilogramsPerHour>;
  /** Wort left behind with trub and hops, at 20 °C. */
  readonly trub: Figure<Litres>;
  /** Wort left in chiller, pump and hoses, at 20 °C. */
  readonly transfer: Figure<Litres>;
  /** Which depth or mark stands for how much; left out where nobody measured it. */
  readonly dipStick?: KettleDipStick;
}

/** The table of a kettle's dip-stick with what it was measured by. */
export interface KettleDipStick extends DipStickTable {
  readonly basis?: string;
}

export interface MashVessel {
  /** `basket` and `bag` stand in the kettle; `tun` is a vessel of its own. */
  readonly kind: "basket" | "bag" | "tun";
  readonly capacity: Litres;
  /** Dry grain that the basket is made for; null where nothing but volume limits it. */
  readonly grainLimit: Kilograms | null;
  readonly falseBottom: boolean;
  readonly heated: boolean;
  readonly heatCapacity: JoulesPerKelvin;
  readonly lossCoefficient: WattsPerKelvin;
  /** Thickest mash that can still be stirred or pumped. */
  readonly thickest: LitresPerKilogram;
}

export type SpargeMethod = "none" | "batch" | "continuous" | "pour-over";

export interface Lauter {
  readonly method: SpargeMethod;
  /** Wort held by the drained grain, per kilogram of dry grain, at 20 °C. */
  readonly absorption: Figure<LitresPerKilogram>;
  /** Wort that cannot be drained from under the grain, at 20 °C. */
  readonly deadSpace: Figure<Litres>;
  /** Share of the sparge water that runs past the grain without washing it. */
  readonly bypass: Figure<Fraction>;
  /** Share of the laboratory extract that the mash dissolves. */
  readonly conversion: Figure<Fraction>;
  /** Power of a separate sparge-water heater; null where the kettle heats it or a kitchen does. */
  readonly spargeHeater: Watts | null;
}

export interface Chiller {
  readonly kind: "immersion" | "counterflow" | "ice bath" | "none";
  readonly conductance: Figure<WattsPerKelvin>;
  readonly coolantFlow: LitresPerMinute;
  readonly coolant: Celsius;
}

export interface Fermenter {
  readonly capacity: Litres;
  /** Kept free for the foam. */
  readonly headspace: Litres;
  /** Beer left with the yeast at packaging, at 20 °C. */
  readonly left: Figure<Litres>;
}

/** Everything `brew` needs to know of one member's equipment. Efficiency is not in it: it is a result. */
export interface Equipment {
  readonly name: string;
  readonly kettle: Kettle;
  readonly mash: MashVessel;
  readonly lauter: Lauter;
  /** Wort held by kettle hops, per kilogram of hops, at 20 °C. */
  readonly hopAbsorption: Figure<LitresPerKilogram>;
  readonly chiller: Chiller;
  readonly fermenter: Fermenter;
  /** What this brewer usually puts into the fermenter. */
  readonly usualBatch: Litres;
  readonly altitude: Metres;
  /** Which of its figures were learned together and are off together; left out, none. */
  readonly correlations?: readonly FigureCorrelation[];
}

/** The surroundings of one brew day. */
export interface Ambient {
  readonly air: Celsius;
  readonly humidity: Fraction;
  readonly tapWater: Celsius;
  readonly grain: Celsius;
}
