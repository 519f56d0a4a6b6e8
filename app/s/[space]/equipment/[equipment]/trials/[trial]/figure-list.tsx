"use client";

import type { Preferences } from "@/lib/model/preferences";
import { intervalOfSd } from "@/lib/ui/brew/interval-of-sd";
import { Quantity } from "@/lib/ui/quantity";
import type { ToldFigure } from "./told-figures";

interface FigureListProps {
  readonly figures: readonly ToldFigure[];
  readonly preferences: Preferences;
  readonly onExplain: (figure: ToldFigure) => void;
}

/** What the trial tells by now, each number leading to its explanation. */
export function FigureList({ figures, preferences, onExplain }: FigureListProps) {
  return (
    <dl className="my-4 grid gap-x-8 gap-y-3 sm:grid-cols-2">
      {figures.map((figure) => {
        const { label, estimate, dimension } = figure;
        return (
          <div key={label}>
            <dt className="text-sm text-muted">{label}</dt>
            <dd className="text-xl">
              <button type="button" className="explained" aria-haspopup="dialog" onClick={() => onExplain(figure)}>
                <span className="sr-only">{label}: </span>
                <Quantity
                  value={estimate.value}
                  dimension={dimension}
                  interval={intervalOfSd(estimate.value, estimate.standardError)}
                  preferences={preferences}
                  digits={dimension === "volume" ? 2 : undefined}
                />
                <span className="sr-only">. Explain</span>
              </button>
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
