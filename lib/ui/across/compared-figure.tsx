import type { ReactElement } from "react";
import { FormattedFigure } from "../formatted-figure";
import { comparedText, type ComparedScale } from "./compared-scale";

/** A compared value with its 80 % interval. */
export interface ComparedFigureProps {
  readonly scale: ComparedScale;
  readonly value: number;
  /** The planned value that a difference is from. */
  readonly base: number;
  readonly interval?: { readonly low80: number; readonly high80: number } | null;
}

export function ComparedFigure({ scale, ...of }: ComparedFigureProps): ReactElement {
  return <FormattedFigure shown={comparedText(scale, of)} />;
}
