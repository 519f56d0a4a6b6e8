import type { ReactElement } from "react";
import { SERIES } from "@/lib/model/log/series";
import type { BrewAmongOthers } from "@/lib/model/summary/compared-brew";
import type { SummaryCurve } from "@/lib/model/summary/brew-summary";
import type { Preferences } from "@/lib/model/preferences";
import { displayUnit } from "../display-unit";
import { linearScale, niceSpan } from "../linear-scale";
import { fixedDigits } from "../fixed-digits";

interface CurveMultiplesProps {
  readonly series: SummaryCurve["series"];
  readonly brews: readonly { readonly brew: BrewAmongOthers; readonly name: string }[];
  readonly preferences: Preferences;
}

const WIDTH = 200;
const HEIGHT = 110;
const HOUR_S = 3600;
const DAY_S = 24 * HOUR_S;

/** One small picture a brew, all on the same axes, so that they compare at a glance. Nothing where nobody logged it. */
export function CurveMultiples({ series, brews, preferences }: CurveMultiplesProps): ReactElement | null {
  const drawn = brews.flatMap(({ brew, name }) => {
    const curve = brew.curves.find((each) => each.series === series);
    return curve === undefined ? [] : [{ id: brew.id, name, curve }];
  });
  if (drawn.length === 0) return null;
  const { label, dimension } = SERIES[series];
  const { unit, fromLibrary, digits } = displayUnit(dimension, preferences);
  const isDay = series === "kettle.temperature";
  const perUnit = isDay ? HOUR_S : DAY_S;
  const points = drawn.flatMap(({ curve }) => curve.points);
  const x = niceSpan([...points.map(([at]) => at / perUnit), 0], 4);
  const y = niceSpan(
    points.map(([, value]) => fromLibrary(value)),
    3,
  );
  const [toX, toY] = [linearScale(x, [4, WIDTH - 4]), linearScale(y, [HEIGHT - 4, 6])];
  const across = `${fixedDigits(x[0], 0)} to ${fixedDigits(x[1], 0)} ${isDay ? "h of the day" : "days from pitching"}`;
  const up = `${fixedDigits(y[0], digits)} to ${fixedDigits(y[1], digits)} ${unit}`;
  return (
    <section className="mt-6">
      <h3>{label}</h3>
      <p className="mt-1 text-muted">
        All on the same axes: across {across}, up {up}.
      </p>
      <div className="mt-3 grid grid-cols-2 gap-x-6 gap-y-4 sm:grid-cols-3 lg:grid-cols-4">
        {drawn.map(({ id, name, curve }) => (
          <SmallCurve key={id} name={name} curve={curve} axes={{ perUnit, fromLibrary, digits, unit, toX, toY }} />
        ))}
      </div>
    </section>
  );
}

interface SmallCurveProps {
  readonly name: string;
  readonly curve: SummaryCurve;
  readonly axes: {
    readonly perUnit: number;
    readonly fromLibrary: (value: number) => number;
    readonly digits: number;
    readonly unit: string;
    readonly toX: (value: number) => number;
    readonly toY: (value: number) => number;
  };
}

function SmallCurve({ name, curve, axes }: SmallCurveProps): ReactElement {
  const { perUnit, fromLibrary, digits, unit, toX, toY } = axes;
  const values = curve.points.map(([, value]) => fromLibrary(value));
  const range = `${fixedDigits(Math.min(...values), digits)} to ${fixedDigits(Math.max(...values), digits)} ${unit}`;
  const line = curve.points.map(([at], i) => `${String(toX(at / perUnit))},${String(toY(values[i] ?? 0))}`).join(" ");
  return (
    <figure className="break-inside-avoid">
      <figcaption className="text-sm">{name}</figcaption>
      <svg className="chart" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden>
        <rect className="small-frame" x="0.5" y="0.5" width={WIDTH - 1} height={HEIGHT - 1} />
        <polyline className="chart-planned" points={line} />
      </svg>
      <p className="text-sm text-muted">
        {range}, {curve.readings} readings
      </p>
    </figure>
  );
}
