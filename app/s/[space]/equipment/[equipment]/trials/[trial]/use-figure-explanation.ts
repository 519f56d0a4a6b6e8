"use client";

import { useCallback, useState } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import type { Interval } from "@/lib/calc/ledger";
import { intervalOfSd } from "@/lib/ui/brew/interval-of-sd";
import type { ToldFigure } from "./told-figures";

interface Opened {
  readonly explanation: ExplainedNumber | null;
  readonly interval: Interval | null;
  readonly open: (figure: ToldFigure) => void;
  readonly close: () => void;
}

/** Opens the explanation of a figure; the words of the library are fetched when the first one is asked for. */
export function useFigureExplanation(): Opened {
  const [opened, setOpened] = useState<{ readonly explanation: ExplainedNumber; readonly figure: ToldFigure } | null>(
    null,
  );

  const open = useCallback((figure: ToldFigure): void => {
    void import("@/lib/calc/explain").then(({ explainFunction }) => {
      const found = explainFunction({ id: figure.functionId });
      if (!found.ok) throw new Error(`${figure.functionId} has no record`);
      const { words, equation, sources, validRange } = found.explained;
      const { label, estimate, dimension, inputs } = figure;
      const explanation = { label, value: estimate.value, dimension, words, equation, inputs, sources, validRange };
      setOpened({ explanation: { ...explanation, whatIf: [] }, figure });
    });
  }, []);

  const estimate = opened?.figure.estimate;
  return {
    explanation: opened?.explanation ?? null,
    interval: estimate === undefined ? null : intervalOfSd(estimate.value, estimate.standardError),
    open,
    close: () => setOpened(null),
  };
}
