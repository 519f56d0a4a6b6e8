import { requireInRange } from "../errors";

/** A point of a curve: how long after its start, and the value. */
export type CurvePoint = readonly [atS: number, value: number];

export const CURVE_RANGE = {
  points: { unit: "", min: 0, max: 1_000_000 },
  most: { unit: "", min: 3, max: 1000 },
  coordinate: { unit: "", min: -1e12, max: 1e12 },
} as const;

/**
 * Thins a curve to what a small picture can show, by keeping the readings that make the largest triangles.
 *
 * The first and the last reading stay. Those between fall into spans of equally many, and of each span the one is kept
 * that stands furthest off its neighbours, so that a peak is not smoothed away. Every point that is left was read.
 *
 * @param a.points - In order of time.
 * @param a.most - How many points are kept.
 * @returns The curve, with no more points than asked for.
 * @validRange Up to 1 000 000 points, and from 3 kept ones on.
 * @throws {@link OutOfRangeError} when there are too many points, too few are asked for or a coordinate is not a number.
 * @source Steinarsson 2013, largest triangle, three buckets (docs/sources.md#steinarsson-2013)
 * @example
 * thinCurve({ points: [[0, 1], [1, 9], [2, 1], [3, 1]], most: 3 }); // [[0, 1], [1, 9], [3, 1]]
 */
export function thinCurve({
  points,
  most,
}: {
  readonly points: readonly CurvePoint[];
  readonly most: number;
}): readonly CurvePoint[] {
  requireInRange("number of points", points.length, CURVE_RANGE.points);
  requireInRange("number of points kept", most, CURVE_RANGE.most);
  for (const point of points) for (const value of point) requireInRange("coordinate", value, CURVE_RANGE.coordinate);
  const [first, last] = [points[0], points.at(-1)];
  if (points.length <= most || first === undefined || last === undefined) return points;
  const spans = Math.floor(most) - 2;
  const startOf = (span: number): number => 1 + Math.round((span * (points.length - 2)) / spans);
  const kept: CurvePoint[] = [first];
  for (let span = 0; span < spans; span++) {
    const next = span === spans - 1 ? [last] : points.slice(startOf(span + 1), startOf(span + 2));
    const before = kept.at(-1) ?? first;
    kept.push(furthest(points.slice(startOf(span), startOf(span + 1)), before, meanOf(next)));
  }
  return [...kept, last];
}

/** The point that makes the largest triangle with its neighbours; the first of several. */
function furthest(span: readonly CurvePoint[], before: CurvePoint, after: CurvePoint): CurvePoint {
  const area = ([x, y]: CurvePoint): number =>
    Math.abs((before[0] - after[0]) * (y - before[1]) - (before[0] - x) * (after[1] - before[1]));
  return span.reduce((best, point) => (area(point) > area(best) ? point : best), span[0] ?? before);
}

function meanOf(points: readonly CurvePoint[]): CurvePoint {
  const mean = (of: 0 | 1): number => points.reduce((sum, point) => sum + point[of], 0) / points.length;
  return [mean(0), mean(1)];
}
