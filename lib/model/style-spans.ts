import { specificGravityToPlato } from "@/lib/calc/gravity";
import type { QuantityId } from "@/lib/calc/ledger";
import { ebcFromSrm, specificGravity, srm } from "@/lib/calc/units";
import type { Span, StyleFigures } from "./styles";

/** The numbers for which a style gives a range. */
export const STYLED_QUANTITIES = [
  "fermenter.originalExtract",
  "fermenter.finalExtract",
  "package.alcohol",
  "fermenter.bitterness",
  "fermenter.colour",
] as const satisfies readonly QuantityId[];
export type StyledQuantity = (typeof STYLED_QUANTITIES)[number];

export function isStyled(id: QuantityId): id is StyledQuantity {
  return STYLED_QUANTITIES.some((each) => each === id);
}

/** The span of a style in the ledger's own units. */
export function styleSpan(figures: StyleFigures, id: StyledQuantity): Span {
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
  }
}

const each = ({ low, high }: Span, to: (value: number) => number): Span => ({ low: to(low), high: to(high) });

const plato = (gravity: number): number => specificGravityToPlato(specificGravity(gravity));
