import { useId, type ReactElement } from "react";
import { linearScale, niceSpan, niceTicks, type Span } from "../linear-scale";
import { fixedDigits } from "../fixed-digits";

/** One line of the plot; everything in the unit that is shown. */
export interface ForestRow {
  readonly id: string;
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** 80 % interval of the plan, drawn as a band. */
  readonly planned: readonly [low: number, high: number] | null;
  readonly isStray: boolean;
}

/**
 * Values with their 80 % intervals, one below the other on one axis. The table beside it says the same in numbers.
 *
 * - `mean` the mean of all with its interval, drawn down the whole plot.
 */
export interface ForestPlotProps {
  readonly title: string;
  readonly description: string;
  readonly unit: string;
  readonly rows: readonly ForestRow[];
  readonly mean: readonly [low: number, value: number, high: number] | null;
}

const WIDTH = 440;
const LEFT = 150;
const RIGHT = 428;
const TOP = 26;
const ROW = 22;
/** What fits in front of the axis. */
const LONGEST_NAME = 22;

export function ForestPlot({ title, description, unit, rows, mean }: ForestPlotProps): ReactElement {
  const id = useId();
  const span = niceSpan([...rows.flatMap(endsOf), ...(mean ?? [])], 5);
  const toX = linearScale(span, [LEFT, RIGHT]);
  const bottom = TOP + rows.length * ROW;
  return (
    <figure className="max-w-2xl">
      <figcaption className="mb-1 font-semibold">{title}</figcaption>
      <svg className="chart" viewBox={`0 0 ${WIDTH} ${bottom + 44}`} role="img" aria-labelledby={`${id}-t ${id}-d`}>
        <title id={`${id}-t`}>{title}</title>
        <desc id={`${id}-d`}>{description}</desc>
        <Axis span={span} toX={toX} bottom={bottom} unit={unit} />
        {mean === null ? null : (
          <>
            <rect
              className="chart-band"
              x={toX(mean[0])}
              width={toX(mean[2]) - toX(mean[0])}
              y={TOP}
              height={bottom - TOP}
            />
            <line className="chart-planned" x1={toX(mean[1])} x2={toX(mean[1])} y1={TOP} y2={bottom} />
            <text className="chart-minor" x={toX(mean[1])} y={TOP - 8} textAnchor="middle">
              mean of these
            </text>
          </>
        )}
        {rows.map((row, i) => (
          <Row key={row.id} row={row} y={TOP + (i + 0.5) * ROW} toX={toX} />
        ))}
      </svg>
    </figure>
  );
}

function endsOf({ low, high, planned }: ForestRow): readonly number[] {
  return [low, high, ...(planned ?? [])];
}

function Row({ row, y, toX }: { readonly row: ForestRow; readonly y: number; readonly toX: (v: number) => number }) {
  const { name, value, low, high, planned, isStray } = row;
  const shown = name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1)}…` : name;
  return (
    <g>
      <text x={0} y={y + 4}>
        {shown}
      </text>
      {planned === null ? null : (
        <line className="forest-plan" x1={toX(planned[0])} x2={toX(planned[1])} y1={y + 6} y2={y + 6} />
      )}
      <line
        className={isStray ? "forest-reach forest-stray" : "forest-reach"}
        x1={toX(low)}
        x2={toX(high)}
        y1={y}
        y2={y}
      />
      <circle
        className={isStray ? "chart-measured chart-suspect" : "chart-measured"}
        cx={toX(value)}
        cy={y}
        r={isStray ? 5 : 4}
      />
    </g>
  );
}

function Axis(a: {
  readonly span: Span;
  readonly toX: (value: number) => number;
  readonly bottom: number;
  readonly unit: string;
}) {
  const ticks = niceTicks(a.span, 5);
  const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0));
  const digits = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return (
    <g aria-hidden>
      {ticks.map((tick) => (
        <g key={tick}>
          <line className="chart-grid" x1={a.toX(tick)} x2={a.toX(tick)} y1={TOP} y2={a.bottom} />
          <text className="chart-minor" x={a.toX(tick)} y={a.bottom + 18} textAnchor="middle">
            {fixedDigits(tick, digits)}
          </text>
        </g>
      ))}
      <line className="chart-axis" x1={LEFT} x2={RIGHT} y1={a.bottom} y2={a.bottom} />
      <text className="chart-minor" x={RIGHT} y={a.bottom + 38} textAnchor="end">
        {a.unit}
      </text>
    </g>
  );
}
