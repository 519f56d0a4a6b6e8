import type { ReactElement } from "react";
import type { BrewsCompared } from "@/lib/calc/compare";
import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { AskedBrew } from "@/lib/model/summary/answer";
import { CurveChart } from "../curve-chart";
import { displayUnit } from "../display-unit";
import { ComparedFigure } from "./compared-figure";
import { comparedScale } from "./compared-scale";
import { Statistic } from "./statistic";

interface AgainstPlanProps {
  readonly measured: readonly AskedBrew[];
  readonly compared: BrewsCompared;
  readonly label: string;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
}

/** Whether the plans are right on the whole: each brew's measured value over its planned one. */
export function AgainstPlan({
  measured,
  compared,
  label,
  dimension,
  preferences,
}: AgainstPlanProps): ReactElement | null {
  const { againstPlan } = compared;
  if (againstPlan === null) return null;
  const { unit, fromLibrary } = displayUnit(dimension, preferences);
  const dots = measured.flatMap(({ figure }) =>
    figure.measured === null ? [] : [{ x: fromLibrary(figure.planned), y: fromLibrary(figure.measured) }],
  );
  const all = dots.flatMap(({ x, y }) => [x, y]);
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const scale = comparedScale("difference", dimension, preferences);
  const base = measured.reduce((sum, { figure }) => sum + figure.planned, 0) / measured.length;
  return (
    <section aria-labelledby="against-plan" className="mt-10">
      <h2 id="against-plan">Planned and measured</h2>
      <p className="mt-1 mb-3">
        On the mean of {measured.length} brews the measured value is{" "}
        <ComparedFigure
          {...{ scale, base, value: againstPlan.meanDifference }}
          interval={againstPlan.ok ? againstPlan : null}
        />{" "}
        from the plan
        {againstPlan.ok ? (
          <>
            ; Student’s t of the pairs, probability by chance <Statistic value={againstPlan.p} kind="probability" />.
          </>
        ) : (
          "; all differ by the same, so there is nothing to measure that by."
        )}
      </p>
      <CurveChart
        title={`${label}: measured over planned`}
        description="A dot for each brew. On the line a brew came out as planned, above it with more, below it with less."
        x={{ label: "planned", unit }}
        y={{ label: "measured", unit }}
        planned={[
          [low, low],
          [high, high],
        ]}
        measured={dots}
        plannedLabel="as planned"
      />
    </section>
  );
}
