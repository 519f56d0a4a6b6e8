"use client";

import { useCallback, useId, type ReactElement } from "react";
import type { QuantityId } from "@/lib/calc/ledger";
import type { Style } from "@/lib/model/styles";
import { ColourPatch } from "../colour-patch";
import { FormattedFigure } from "../formatted-figure";
import { beerFigures } from "./beer-figures";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { stylePlace } from "./style-place";
import { useEditorValue } from "./use-editor-value";
import { useShownQuantity } from "./use-shown-quantity";

/** A glass held to the light. */
const PATH_CM = 7.5;

/** The beer in one line: strength, bitterness and colour as plain numbers with their intervals. */
export function BeerLine({ style }: { readonly style: Style | null }): ReactElement {
  const { preferences } = useEditor();
  return (
    <div className="flex flex-wrap items-start gap-x-8 gap-y-2">
      {beerFigures(preferences).map(({ id, label }) => (
        <BeerFigure key={id} id={id} label={label} style={style} />
      ))}
      <BeerColour />
    </div>
  );
}

function BeerColour(): ReactElement | null {
  const colour = useEditorValue(({ shown }) => shown?.brewed.ledger.quantities["fermenter.colour"] ?? null);
  return colour === null ? null : (
    <div className="self-center">
      <ColourPatch colourEbc={colour} pathCm={PATH_CM} />
    </div>
  );
}

interface BeerFigureProps {
  readonly id: QuantityId;
  readonly label: string;
  readonly style: Style | null;
}

function BeerFigure({ id, label, style }: BeerFigureProps): ReactElement {
  const { explain } = useEditor();
  const labelId = useId();
  const shown = useShownQuantity(id);
  return (
    <div>
      <span id={labelId} className="block text-sm text-muted">
        {label}
      </span>
      <output aria-live="off" aria-labelledby={labelId} className="text-lg">
        <button type="button" className="explained py-1" aria-haspopup="dialog" onClick={() => explain(id)}>
          {shown === null ? "—" : <FormattedFigure shown={shown} />}
          <span className="sr-only">. Explain {label}</span>
        </button>
      </output>
      <StylePlace id={id} style={style} />
    </div>
  );
}

function StylePlace({ id, style }: Omit<BeerFigureProps, "label">): ReactElement | null {
  const { preferences } = useEditor();
  const figures = style?.figures ?? null;
  const select = useCallback(
    ({ shown }: EditorState) => {
      const value = shown?.brewed.ledger.quantities[id] ?? null;
      return figures === null || value === null ? null : stylePlace({ figures, id, value, preferences });
    },
    [figures, id, preferences],
  );
  const place = useEditorValue(select);
  return place === null ? null : <span className="block text-sm">{place}</span>;
}
