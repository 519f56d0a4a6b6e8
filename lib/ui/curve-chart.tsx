import { useId, type ReactElement } from "react";
import { ChartAxes } from "./chart-axes";
import { linearScale, niceSpan } from "./linear-scale";

/**
 * A planned line with measured dots, drawn without a library: it is text and lines in the page, so it prints and follows
 * the theme.
 *
 * - `title` states what is seen, `description` says it in a sentence or two for those who do not see it.
 * - `x` and `y` name the axes with their units; all values are in those units already.
 * - `planned` the line; `band` its 80 % interval; `measured` the dots, a suspect one filled in the accent colour.
 * - `plannedLabel`, `measuredLabel` stand at the line and at the last dot, in place of a legend.
 */
export interface CurveChartProps {
  readonly title: string;
  readonly description: string;
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly planned: readonly Point[];
  readonly band?: readonly (readonly [x: number, low: number, high: number])[] | undefined;
  readonly measured?: readonly MeasuredPoint[] | undefined;
  readonly plannedLabel: string;
  readonly measuredLabel?: string | undefined;
}

export interface ChartAxis {
  readonly label: string;
  readonly unit: string;
}

export type Point = readonly [x: number, y: number];

export interface MeasuredPoint {
  readonly x: number;
  readonly y: number;
  readonly isSuspect?: boolean | undefined;
}

const WIDTH = 440;
const HEIGHT = 270;
const FRAME = { left: 46, right: 428, top: 34, bottom: 228 } as const;

export function CurveChart(props: CurveChartProps): ReactElement {
  const { title, description, planned, band = [], measured = [] } = props;
  const id = useId();
  const spanX = niceSpan([...planned.map(([x]) => x), ...measured.map(({ x }) => x)], 5);
  const spanY = niceSpan(
    [...planned.map(([, y]) => y), ...measured.map(({ y }) => y), ...band.flatMap(([, low, high]) => [low, high])],
    5,
  );
  const toX = linearScale(spanX, [FRAME.left, FRAME.right]);
  const toY = linearScale(spanY, [FRAME.bottom, FRAME.top]);
  const at = ([x, y]: Point): string => `${toX(x).toFixed(1)},${toY(y).toFixed(1)}`;
  const upper = band.map(([x, , high]): Point => [x, high]);
  const lower = band.map(([x, low]): Point => [x, low]).reverse();
  const sides = labelSides(planned.at(-1), last(measured));
  return (
    <figure className="max-w-lg">
      <figcaption className="mb-1 font-semibold">{title}</figcaption>
      <svg className="chart" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={`${id}-t ${id}-d`}>
        <title id={`${id}-t`}>{title}</title>
        <desc id={`${id}-d`}>{description}</desc>
        <ChartAxes frame={FRAME} x={{ ...props.x, span: spanX, at: toX }} y={{ ...props.y, span: spanY, at: toY }} />
        {band.length === 0 ? null : <polygon className="chart-band" points={[...upper, ...lower].map(at).join(" ")} />}
        <polyline className="chart-planned" points={planned.map(at).join(" ")} />
        <EndLabel text={props.plannedLabel} point={planned.at(-1)} at={{ x: toX, y: toY }} side={sides.planned} />
        <EndLabel text={props.measuredLabel} point={last(measured)} at={{ x: toX, y: toY }} side={sides.measured} />
        {measured.map(({ x, y, isSuspect }) => (
          <circle
            key={`${x} ${y}`}
            className={isSuspect === true ? "chart-measured chart-suspect" : "chart-measured"}
            cx={toX(x)}
            cy={toY(y)}
            r="4.5"
          />
        ))}
      </svg>
    </figure>
  );
}

function last(measured: readonly MeasuredPoint[]): Point | undefined {
  const point = measured.at(-1);
  return point === undefined ? undefined : [point.x, point.y];
}

type Side = "above" | "below";

/** The series that ends higher is named above its end, so that the two names keep out of each other's way. */
function labelSides(planned: Point | undefined, measured: Point | undefined): Record<"planned" | "measured", Side> {
  const isHigher = planned !== undefined && measured !== undefined && measured[1] > planned[1];
  return isHigher ? { planned: "below", measured: "above" } : { planned: "above", measured: "below" };
}

/** A series names itself at its end, turned inwards where the frame ends. */
function EndLabel(props: {
  readonly text: string | undefined;
  readonly point: Point | undefined;
  readonly at: { readonly x: (value: number) => number; readonly y: (value: number) => number };
  readonly side: Side;
}): ReactElement | null {
  const { text, point, at, side } = props;
  if (text === undefined || point === undefined) return null;
  const x = at.x(point[0]);
  return (
    <text
      x={x}
      y={at.y(point[1]) + (side === "above" ? -10 : 20)}
      textAnchor={x > (FRAME.left + FRAME.right) / 2 ? "end" : "start"}
    >
      {text}
    </text>
  );
}
