import { specificGravityToPlato } from "@/lib/calc/gravity";
import { styleDistance, type FigurePlace } from "@/lib/calc/judging";
import { Z80 } from "@/lib/calc/statistics";
import type { Prediction, Predictions } from "../brew";
import { STYLED_QUANTITIES, styleSpan, type StyledQuantity } from "../style-spans";
import { STYLES, type Span, type Style } from "../styles";
import type { SummaryFigure, SummaryOfBrew } from "../summary/brew-summary";
import type { BeerFigures } from "./prepare";

/** One number of a beer, in the ledger's unit: read from it, computed from its recipe, or said by its brewer. */
export interface BeerFigure {
  readonly quantity: StyledQuantity;
  readonly from: "measured" | "computed" | "stated";
  readonly value: number;
  readonly sd: number | null;
  /** 80 % interval; null where nothing is known of the uncertainty. */
  readonly interval: { readonly low80: number; readonly high80: number } | null;
}

/** What a brew has of the numbers of a style: what was measured, and else what was computed when it was planned. */
export function figuresOfBrew(summary: SummaryOfBrew | null, predicted: Predictions): readonly BeerFigure[] {
  return STYLED_QUANTITIES.flatMap((quantity) => {
    const figure = summary?.figures.find((each) => each.quantity === quantity);
    return (figure === undefined ? null : measuredOf(quantity, figure)) ?? computedOf(quantity, predicted[quantity]);
  });
}

function measuredOf(quantity: StyledQuantity, figure: SummaryFigure): BeerFigure | null {
  const { measured, measuredSd: sd, measuredLow80: low80, measuredHigh80: high80 } = figure;
  if (measured === null) return null;
  const interval = low80 === null || high80 === null ? null : { low80, high80 };
  return { quantity, from: "measured", value: measured, sd, interval };
}

function computedOf(quantity: StyledQuantity, prediction: Prediction | undefined): readonly BeerFigure[] {
  if (prediction === undefined) return [];
  const { value, low80, high80 } = prediction;
  return [{ quantity, from: "computed", value, sd: (high80 - low80) / (2 * Z80), interval: { low80, high80 } }];
}

/** What the brewer of a beer from elsewhere says of it, in the units of the ledger. */
export function figuresOfBeer(figures: BeerFigures): readonly BeerFigure[] {
  const { originalGravity, finalGravity, alcohol, bitterness, colour } = figures;
  const values: Readonly<Record<StyledQuantity, number | null>> = {
    "fermenter.originalExtract": originalGravity === null ? null : specificGravityToPlato(originalGravity),
    "fermenter.finalExtract": finalGravity === null ? null : specificGravityToPlato(finalGravity),
    "package.alcohol": alcohol,
    "fermenter.bitterness": bitterness,
    "fermenter.colour": colour,
  };
  return STYLED_QUANTITIES.flatMap((quantity) => {
    const value = values[quantity];
    return value === null ? [] : [{ quantity, from: "stated" as const, value, sd: null, interval: null }];
  });
}

export interface PlacedFigure extends BeerFigure {
  readonly span: Span;
  readonly place: FigurePlace;
}

/** A beer held against the published numbers of a style. */
export interface StyleCheck {
  readonly code: string;
  readonly name: string;
  readonly distance: number;
  readonly offCentre: number;
  readonly figures: readonly PlacedFigure[];
}

/** null where the style has no numbers of its own, or none of the beer is known. */
export function checkAgainst(
  figures: readonly BeerFigure[],
  { code, name, figures: ranges }: Style,
): StyleCheck | null {
  if (ranges === null || figures.length === 0) return null;
  const spans = figures.map(({ quantity }) => styleSpan(ranges, quantity));
  const {
    distance,
    offCentre,
    figures: places,
  } = styleDistance(figures.map(({ value, sd }, at) => ({ value, sd, ...(spans[at] ?? { low: 0, high: 0 }) })));
  const placed = figures.flatMap((figure, at) => {
    const [span, place] = [spans[at], places[at]];
    return span === undefined || place === undefined ? [] : [{ ...figure, span, place }];
  });
  return { code, name, distance, offCentre, figures: placed };
}

/** The styles whose published numbers a beer is nearest to: by distance, and among those that fit by their middles. */
export function nearestStyles(figures: readonly BeerFigure[], howMany: number): readonly StyleCheck[] {
  return STYLES.flatMap((style) => checkAgainst(figures, style) ?? [])
    .sort((a, b) => a.distance - b.distance || a.offCentre - b.offCentre)
    .slice(0, howMany);
}

export function styleNamed(code: string | null): Style | null {
  return STYLES.find((style) => style.code === code) ?? null;
}
