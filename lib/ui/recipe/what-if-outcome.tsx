"use client";

import type { ReactElement } from "react";
import { FormattedFigure } from "../formatted-figure";
import { formatDifference } from "../format-difference";
import { formatQuantity } from "../format-quantity";
import { explainedDimension, type Trial, type Tried } from "./what-if";

/** What comes of a trial, and how far that is from the number as it is. */
export function WhatIfOutcome(props: {
  readonly from: number;
  readonly outcome: Tried;
  readonly trial: Trial;
}): ReactElement {
  const { from, outcome, trial } = props;
  const { preferences, explained } = trial;
  const dimension = explainedDimension(explained);
  if (!outcome.ok) {
    return (
      <p role="status" className="mt-2">
        With these values there is no such number: {outcome.why}.
      </p>
    );
  }
  const { value } = outcome;
  return (
    <p role="status" className="mt-2 text-xl">
      <FormattedFigure shown={formatQuantity({ value, dimension, preferences })} />{" "}
      {value === from ? null : (
        <span className="text-base">
          (<FormattedFigure shown={formatDifference({ value, from, dimension, preferences })} />)
        </span>
      )}
    </p>
  );
}
