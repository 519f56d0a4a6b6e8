"use client";

import { useId, type ReactElement } from "react";
import { QUANTITIES, type Intervals, type Ledger, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { ColourPatch } from "../colour-patch";
import { Quantity } from "../quantity";
import type { Style } from "@/lib/model/styles";
import { beerFigures } from "./beer-figures";
import { stylePlace } from "./style-place";

/** The beer in one line: strength, bitterness and colour as plain numbers with their intervals. */
export interface BeerLineProps {
  readonly ledger: Ledger;
  readonly intervals: Intervals;
  readonly preferences: Preferences;
  /** The style that the beer is held against. */
  readonly style: Style | null;
  readonly onExplain: (id: QuantityId) => void;
}

/** A glass held to the light. */
const PATH_CM = 7.5;

export function BeerLine({ ledger, intervals, preferences, style, onExplain }: BeerLineProps): ReactElement {
  const colour = ledger.quantities["fermenter.colour"];
  return (
    <div className="flex flex-wrap items-start gap-x-8 gap-y-2">
      {beerFigures(preferences).map(({ id, label }) => (
        <BeerFigure
          key={id}
          {...{ id, label, preferences, style, onExplain }}
          value={ledger.quantities[id]}
          intervals={intervals}
        />
      ))}
      {colour === null ? null : (
        <div className="self-center">
          <ColourPatch colourEbc={colour} pathCm={PATH_CM} />
        </div>
      )}
    </div>
  );
}

function BeerFigure(props: {
  readonly id: QuantityId;
  readonly label: string;
  readonly value: number | null;
  readonly intervals: Intervals;
  readonly preferences: Preferences;
  readonly style: Style | null;
  readonly onExplain: (id: QuantityId) => void;
}): ReactElement {
  const { id, label, value, intervals, preferences, style, onExplain } = props;
  const labelId = useId();
  const figures = style?.figures ?? null;
  return (
    <div>
      <span id={labelId} className="block text-sm text-muted">
        {label}
      </span>
      <output aria-live="off" aria-labelledby={labelId} className="text-lg">
        <button type="button" className="explained py-1" aria-haspopup="dialog" onClick={() => onExplain(id)}>
          <Quantity
            value={value}
            interval={intervals[id]}
            dimension={QUANTITIES[id].dimension}
            preferences={preferences}
          />
          <span className="sr-only">. Explain {label}</span>
        </button>
      </output>
      {figures === null || value === null ? null : (
        <span className="block text-sm">{stylePlace({ figures, id, value, preferences })}</span>
      )}
    </div>
  );
}
