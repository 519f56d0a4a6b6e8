"use client";

import { useId, type ReactElement } from "react";
import { QUANTITIES, type Intervals, type Ledger, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { ColourPatch } from "../colour-patch";
import { Quantity } from "../quantity";
import { beerFigures } from "./beer-figures";

/** The beer in one line: strength, bitterness and colour as plain numbers with their intervals. */
export interface BeerLineProps {
  readonly ledger: Ledger;
  readonly intervals: Intervals;
  readonly preferences: Preferences;
  readonly onExplain: (id: QuantityId) => void;
}

/** A glass held to the light. */
const PATH_CM = 7.5;

export function BeerLine({ ledger, intervals, preferences, onExplain }: BeerLineProps): ReactElement {
  const colour = ledger.quantities["fermenter.colour"];
  return (
    <div className="flex flex-wrap items-end gap-x-8 gap-y-2">
      {beerFigures(preferences).map(({ id, label }) => (
        <BeerFigure
          key={id}
          {...{ id, label, preferences, onExplain }}
          value={ledger.quantities[id]}
          intervals={intervals}
        />
      ))}
      {colour === null ? null : <ColourPatch colourEbc={colour} pathCm={PATH_CM} />}
    </div>
  );
}

function BeerFigure(props: {
  readonly id: QuantityId;
  readonly label: string;
  readonly value: number | null;
  readonly intervals: Intervals;
  readonly preferences: Preferences;
  readonly onExplain: (id: QuantityId) => void;
}): ReactElement {
  const { id, label, value, intervals, preferences, onExplain } = props;
  const labelId = useId();
  return (
    <div>
      <span id={labelId} className="block text-sm text-muted">
        {label}
      </span>
      <output aria-live="off" aria-labelledby={labelId} className="text-lg">
        <button type="button" className="explained target" aria-haspopup="dialog" onClick={() => onExplain(id)}>
          <Quantity
            value={value}
            interval={intervals[id]}
            dimension={QUANTITIES[id].dimension}
            preferences={preferences}
          />
          <span className="sr-only">. Explain {label}</span>
        </button>
      </output>
    </div>
  );
}
