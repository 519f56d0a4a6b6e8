import type { ReactElement } from "react";
import type { BrewsCompared } from "@/lib/calc/compare";
import type { AskedBrew } from "@/lib/model/summary/answer";
import type { ComparedScale } from "./compared-scale";
import { ForestPlot, type ForestRow } from "./forest-plot";

interface ComparedForestProps {
  readonly rows: readonly AskedBrew[];
  readonly compared: BrewsCompared;
  readonly strays: ReadonlySet<string>;
  readonly label: string;
  readonly scale: ComparedScale;
  readonly base: number;
}

/** The brews of a page as a forest plot, in the reader's unit. */
export function ComparedForest({ rows, compared, strays, label, scale, base }: ComparedForestProps): ReactElement {
  const results = new Map(compared.results.map((result) => [result.id, result]));
  const drawn = rows.flatMap(({ brew, name, figure }): ForestRow[] => {
    const result = results.get(brew.id);
    if (result === undefined) return [];
    const at = (value: number): number => scale.shown(value, figure.planned);
    const offset = scale.as === "measured" ? 0 : figure.planned;
    const { plannedLow80: low, plannedHigh80: high } = figure;
    return [
      {
        ...{ id: brew.id, name, isStray: strays.has(brew.id) },
        ...{ value: at(result.value), low: at(result.low80), high: at(result.high80) },
        planned: low === null || high === null ? null : [at(low - offset), at(high - offset)],
      },
    ];
  });
  const { mean } = compared;
  const ends = mean === null ? null : ([mean.low80, mean.value, mean.high80] as const);
  const [from = 0, middle = 0, to = 0] = ends?.map((value) => scale.shown(value, base)) ?? [];
  return (
    <div className="mt-6">
      <ForestPlot
        title={scale.as === "measured" ? label : `${label}: difference from the plan`}
        description="Each brew with its 80 % interval; the thick line below it is what its plan let expect. The table has the numbers."
        unit={scale.unit}
        rows={drawn}
        mean={ends === null ? null : [from, middle, to]}
      />
    </div>
  );
}
