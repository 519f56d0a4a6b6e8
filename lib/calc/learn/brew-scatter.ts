import type { FigureName } from "../ledger";

interface Scatter {
  /** Share of the value. */
  readonly share: number;
  /** No less than this, in the unit of the figure. */
  readonly least: number;
}

/**
 * How far a figure of one kettle is off from one brew to the next, for nobody drains, boils or chills twice alike. All common
 * practice, no source; a profile with many brews tells its own.
 */
const BREW_SCATTER: Readonly<Record<FigureName, Scatter>> = {
  "kettle.heatShare": { share: 0.015, least: 0 },
  "kettle.lossCoefficient": { share: 0.1, least: 0 },
  "kettle.boilOff": { share: 0.05, least: 0 },
  "kettle.trub": { share: 0.15, least: 0.1 },
  "kettle.transfer": { share: 0.1, least: 0.02 },
  "lauter.absorption": { share: 0.05, least: 0 },
  "lauter.deadSpace": { share: 0.05, least: 0.02 },
  "lauter.bypass": { share: 0, least: 0.03 },
  "lauter.conversion": { share: 0, least: 0.01 },
  hopAbsorption: { share: 0.15, least: 0 },
  "chiller.conductance": { share: 0.05, least: 0 },
  "fermenter.left": { share: 0.15, least: 0.1 },
};

/**
 * Tells how far a figure is off from one brew to the next on the same kettle.
 *
 * @returns Standard deviation, in the unit of the figure.
 * @source Common practice (docs/sources.md#trade-practice)
 */
export function brewScatter(name: FigureName, value: number): number {
  const { share, least } = BREW_SCATTER[name];
  return Math.max(least, share * Math.abs(value));
}
