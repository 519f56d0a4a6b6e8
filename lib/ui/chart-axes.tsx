import type { ReactElement } from "react";
import { niceTicks, type Span } from "./linear-scale";

/** The two axes of a chart: rules at round values, figures beside them, the unit at the end of each axis. */
export interface ChartAxesProps {
  readonly frame: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly x: ScaledAxis;
  readonly y: ScaledAxis;
}

export interface ScaledAxis {
  readonly label: string;
  readonly unit: string;
  readonly span: Span;
  readonly at: (value: number) => number;
}

export function ChartAxes({ frame, x, y }: ChartAxesProps): ReactElement {
  return (
    <g aria-hidden>
      {niceTicks(y.span, 5).map((tick) => (
        <g key={tick}>
          <line className="chart-grid" x1={frame.left} x2={frame.right} y1={y.at(tick)} y2={y.at(tick)} />
          <text className="chart-minor" x={frame.left - 6} y={y.at(tick) + 4} textAnchor="end">
            {tickText(tick, y.span)}
          </text>
        </g>
      ))}
      {niceTicks(x.span, 5).map((tick) => (
        <g key={tick}>
          <line className="chart-axis" x1={x.at(tick)} x2={x.at(tick)} y1={frame.bottom} y2={frame.bottom + 4} />
          <text className="chart-minor" x={x.at(tick)} y={frame.bottom + 18} textAnchor="middle">
            {tickText(tick, x.span)}
          </text>
        </g>
      ))}
      <line className="chart-axis" x1={frame.left} x2={frame.right} y1={frame.bottom} y2={frame.bottom} />
      <text className="chart-minor" x={0} y={frame.top - 18}>
        {axisText(y)}
      </text>
      <text className="chart-minor" x={frame.right} y={frame.bottom + 36} textAnchor="end">
        {axisText(x)}
      </text>
    </g>
  );
}

function axisText({ label, unit }: ScaledAxis): string {
  return unit === "" ? label : `${label}, ${unit}`;
}

/** As many digits as the step between ticks needs, so that 1.050 does not become 1.05 among its neighbours. */
function tickText(tick: number, span: Span): string {
  const [first = 0, second = 1] = niceTicks(span, 5);
  const digits = Math.max(0, -Math.floor(Math.log10(Math.abs(second - first)) + 1e-9));
  return tick.toFixed(digits).replace("-", "−");
}
