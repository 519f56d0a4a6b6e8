import type { ReactElement } from "react";
import type { Preferences } from "@/lib/model/preferences";
import { fixedDigits } from "../fixed-digits";
import { Quantity } from "../quantity";
import type { IngredientFigure } from "./ingredient-figures";

interface FigureValueProps {
  readonly figure: IngredientFigure;
  readonly preferences: Preferences;
}

const PLAIN_DIGITS = 3;

/** A figure of an ingredient: a number, a span of two, or a word. */
export function FigureValue({ figure, preferences }: FigureValueProps): ReactElement {
  const { value, dimension, unit } = figure;
  if (value === null) return <span className="text-muted">not known</span>;
  if (typeof value === "string") return <>{value}</>;
  if (dimension === null) return <>{`${plain(typeof value === "number" ? value : value.low)} ${unit ?? ""}`}</>;
  if (typeof value === "number") return <Quantity {...{ value, dimension, preferences }} />;
  return (
    <>
      <Quantity value={value.low} {...{ dimension, preferences }} /> to{" "}
      <Quantity value={value.high} {...{ dimension, preferences }} />
    </>
  );
}

function plain(value: number): string {
  return Number.isInteger(value) ? String(value) : fixedDigits(value, PLAIN_DIGITS);
}
