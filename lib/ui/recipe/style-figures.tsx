"use client";

import type { ReactElement } from "react";
import { specificGravityToPlato } from "@/lib/calc/gravity";
import { QUANTITIES, type Dimension, type Ledger, type QuantityId } from "@/lib/calc/ledger";
import { ebcFromSrm, specificGravity, srm } from "@/lib/calc/units";
import type { Preferences } from "@/lib/model/preferences";
import type { Span, Style, StyleFigures as Figures } from "@/lib/model/styles";
import { displayUnit } from "../display-unit";
import { fixedDigits } from "../fixed-digits";
import { beerFigures } from "./beer-figures";

/** The beer against the figures of its style, as plain numbers. */
export interface StyleFiguresProps {
  readonly style: Style;
  readonly ledger: Ledger;
  readonly preferences: Preferences;
}

export function StyleFigures({ style, ledger, preferences }: StyleFiguresProps): ReactElement {
  const { figures } = style;
  if (figures === null) return <p className="text-muted">The figures of this style follow those of its base style.</p>;
  return (
    <ul className="flex flex-wrap gap-x-8 gap-y-1 text-sm">
      {beerFigures(preferences).map(({ id, label }) => {
        const span = spanOf(figures, id);
        const value = ledger.quantities[id];
        if (span === null || value === null) return null;
        const { dimension } = QUANTITIES[id];
        return (
          <li key={id}>
            <span className="text-muted">{label}</span> {place(value, span, dimension, preferences)}
          </li>
        );
      })}
    </ul>
  );
}

/** The span of a style in the ledger's own units. */
function spanOf(figures: Figures, id: QuantityId): Span | null {
  const each = ({ low, high }: Span, to: (value: number) => number): Span => ({ low: to(low), high: to(high) });
  switch (id) {
    case "fermenter.originalExtract":
      return each(figures.originalGravity, plato);
    case "fermenter.finalExtract":
      return each(figures.finalGravity, plato);
    case "package.alcohol":
      return figures.alcohol;
    case "fermenter.bitterness":
      return figures.bitterness;
    case "fermenter.colour":
      return each(figures.colour, (value) => ebcFromSrm(srm(value)));
    default:
      return null;
  }
}

// The extract scale begins at water; a few styles end below it.
const plato = (gravity: number): number => specificGravityToPlato(specificGravity(Math.max(1, gravity)));

function place(value: number, { low, high }: Span, dimension: Dimension, preferences: Preferences): string {
  const { unit, digits, fromLibrary } = displayUnit(dimension, preferences);
  const text = (of: number): string => fixedDigits(fromLibrary(of), digits);
  const range = `${text(low)}–${text(high)} ${unit}`;
  const off = (bound: number): string => fixedDigits(Math.abs(fromLibrary(value) - fromLibrary(bound)), digits);
  if (value < low) return `${off(low)} below ${range}`;
  if (value > high) return `${off(high)} above ${range}`;
  return `inside ${range}`;
}
