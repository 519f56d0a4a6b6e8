import type { ReactElement } from "react";
import type { StrayBrews } from "@/lib/calc/compare";
import { Statistic } from "./statistic";

interface StrayLineProps {
  readonly outliers: StrayBrews;
  readonly nameOf: (id: string) => string;
}

const SILENT: Readonly<Record<Extract<StrayBrews, { ok: false }>["reason"], string>> = {
  "too-few": "With fewer than three brews none can be called far out.",
  "no-scatter": "More than half of the brews agree exactly, so the test of strays has nothing to measure by.",
};

/** Which brews lie too far out, by which test, and how often that test speaks without cause. */
export function StrayLine({ outliers, nameOf }: StrayLineProps): ReactElement {
  if (!outliers.ok) return <p>{SILENT[outliers.reason]}</p>;
  const { test, level, critical, stray } = outliers;
  return (
    <p>
      {stray.length === 0
        ? "No brew lies too far out, "
        : stray.map(({ id, statistic }, i) => (
            <span key={id}>
              {i === 0 ? null : ", "}
              <strong className="text-accent">{nameOf(id)}</strong> (<Statistic value={statistic} />)
            </span>
          ))}
      {stray.length === 0 ? null : stray.length === 1 ? " lies too far out, " : " lie too far out, "}
      by {test === "Grubbs" ? "Grubbs’ test" : "the modified z"}, whose limit is <Statistic value={critical} />
      {level === null
        ? ": several strays do not hide each other."
        : "; it calls a sound brew stray in 5 of 100 comparisons, and finds one stray at most."}
    </p>
  );
}
