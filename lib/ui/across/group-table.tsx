import type { ReactElement } from "react";
import type { GroupedBrews } from "@/lib/calc/compare";
import { DataTable } from "../data-table";
import { ComparedFigure } from "./compared-figure";
import type { ComparedScale } from "./compared-scale";
import { Statistic } from "./statistic";

interface GroupTableProps {
  readonly by: string;
  readonly grouped: GroupedBrews;
  readonly scale: ComparedScale;
  readonly base: number;
}

/** Means of the groups, and whether the groups differ. */
export function GroupTable({ by, grouped, scale, base }: GroupTableProps): ReactElement | null {
  const { groups, anova } = grouped;
  if (groups.length < 2) return null;
  return (
    <section aria-labelledby="groups" className="mt-10">
      <h2 id="groups">By {by}</h2>
      <p className="mt-1">
        {anova === null ? (
          "No group has two brews that differ, so there is nothing to measure the groups by."
        ) : (
          <>
            Between the groups against within them: F <Statistic value={anova.f} /> on {anova.betweenDf} and{" "}
            {anova.withinDf}, probability by chance <Statistic value={anova.p} kind="probability" />.
          </>
        )}
      </p>
      <DataTable
        caption={`Means by ${by}`}
        captionHidden
        records={groups}
        keyOf={({ name }) => name}
        columns={[
          { id: "name", label: by.charAt(0).toUpperCase() + by.slice(1), cell: ({ name }) => name },
          { id: "n", label: "Brews", isNumber: true, cell: ({ n }) => n },
          {
            id: "mean",
            label: "Mean with 80 % interval",
            isNumber: true,
            cell: ({ mean, low80, high80 }) => (
              <ComparedFigure
                {...{ scale, base, value: mean }}
                interval={low80 === null || high80 === null ? null : { low80, high80 }}
              />
            ),
          },
        ]}
      />
    </section>
  );
}
