import type { Equipment, FigureName, FigurePlace } from "../ledger";
import { spreadQuantile } from "../statistics/spread-quantile";
import type { Kind } from "./kind-of";

/** What kettles of one kind have in one figure, in its unit, for a kettle of one size. */
export interface KindFigure {
  readonly name: FigureName;
  /** Of all kettles of the kind there could be. */
  readonly mean: number;
  readonly meanSd: number;
  /** Sd between kettles: its median, and the interval that holds it with 80 %. */
  readonly betweenSd: number;
  readonly betweenLow80: number;
  readonly betweenHigh80: number;
  /** Kettles and brews that tell something of it. */
  readonly kettles: number;
  readonly brews: number;
}

/**
 * States what is known of a kind in the units of the figures.
 *
 * @returns Each figure of the kind.
 */
export function kindFigures(places: readonly FigurePlace[], start: Equipment, kind: Kind): KindFigure[] {
  const size = places.length;
  return places.map(({ name, of }, k) => {
    const { value, sd } = of(start);
    const spread = (p: number): number => sd * spreadQuantile(kind.spreads[k] ?? [], p);
    return {
      name,
      mean: value + sd * (kind.mean[k] ?? 0),
      meanSd: sd * Math.sqrt(kind.covariance[k * size + k] ?? 0),
      betweenSd: spread(0.5),
      betweenLow80: spread(0.1),
      betweenHigh80: spread(0.9),
      ...(kind.counts[k] ?? { kettles: 0, brews: 0 }),
    };
  });
}
