import type { ReactElement } from "react";
import type { BrewsCompared } from "@/lib/calc/compare";
import { FormattedFigure } from "../formatted-figure";
import { ComparedFigure } from "./compared-figure";
import { spreadText, type ComparedScale } from "./compared-scale";
import { Statistic } from "./statistic";

interface FindingsProps {
  readonly compared: BrewsCompared;
  readonly scale: ComparedScale;
  /** A planned value that stands for all, for scales that are bent. */
  readonly base: number;
}

/** Below this the differences are called more than chance. */
const LEVEL = 0.05;
/** With fewer than these the page says how little they prove before it says anything else. */
const FEW = 5;

/** What the numbers say and how much that proves, never beyond what they support. */
export function Findings({ compared, scale, base }: FindingsProps): ReactElement {
  const { results, mean, chance, detectable, between } = compared;
  const spread = (sd: number): ReactElement => <FormattedFigure shown={spreadText(scale, sd, base)} />;
  return (
    <ul className="list-disc ps-5">
      {results.length < FEW ? (
        <li>
          {results.length === 1 ? "One brew was measured: there is nothing to compare it with." : null}
          {detectable === null ? null : (
            <>
              <strong>{results.length} brews prove little:</strong> brews would have to differ with a standard deviation
              of {spread(detectable)} for so few to show it four times of five.
            </>
          )}
        </li>
      ) : null}
      {mean === null ? null : (
        <li>
          Mean of {results.length} brews:{" "}
          <ComparedFigure scale={scale} value={mean.value} base={base} interval={mean} />
        </li>
      )}
      {chance === null ? null : (
        <li>
          {chance.p < LEVEL
            ? "The brews differ by more than their readings are unsure"
            : "The brews differ by no more than their readings are unsure"}
          : χ² <Statistic value={chance.q} /> on {chance.df}, probability by chance{" "}
          <Statistic value={chance.p} kind="probability" />.
        </li>
      )}
      {between === null ? null : (
        <li>
          Between brews, without the readings’ own uncertainty: standard deviation {spread(between.betweenSd)}, with 80
          % between {spread(between.betweenLow80)} and {spread(between.betweenHigh80)}.
        </li>
      )}
    </ul>
  );
}
