import type { ReactElement } from "react";
import { beerSrgb } from "@/lib/calc/colour";
import { ebc, srmFromEbc } from "@/lib/calc/units";

/**
 * A rectangle in the colour of the beer, computed from its transmission over a stated path.
 *
 * - `colourEbc` the ledger's colour; `pathCm` how much beer the light goes through.
 *
 * Drawn with a fill attribute, because a strict content policy allows no inline style.
 */
export interface ColourPatchProps {
  readonly colourEbc: number;
  readonly pathCm: number;
}

export function ColourPatch({ colourEbc, pathCm }: ColourPatchProps): ReactElement {
  const [red, green, blue] = beerSrgb({ srm: srmFromEbc(ebc(colourEbc)), pathCm });
  return (
    <figure className="inline-flex items-center gap-2">
      <svg className="colour-patch" width="64" height="28" aria-hidden>
        <rect width="64" height="28" fill={`rgb(${red},${green},${blue})`} stroke="currentColor" strokeWidth="1" />
      </svg>
      <figcaption className="text-sm text-muted">through {pathCm} cm, by daylight</figcaption>
    </figure>
  );
}
