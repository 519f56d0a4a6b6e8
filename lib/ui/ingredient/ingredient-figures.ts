import type { Dimension } from "@/lib/calc/ledger";
import { LOT_STORAGE_FIELDS } from "@/lib/model/ingredient-fields";
import type { KindAndFigures } from "@/lib/model/ingredient";
import type { LotKindAndFigures } from "@/lib/model/ingredient-lot";
import { SALT_FIELDS } from "@/lib/model/recipe-fields";

/** One figure of an ingredient or a lot, with what it means. */
export interface IngredientFigure {
  readonly label: string;
  readonly means: string;
  /** A number or a span of two; a word where the figure is none. */
  readonly value: number | Span | string | null;
  readonly dimension: Dimension | null;
  /** Unit of a number without dimension. */
  readonly unit?: string;
}

interface Span {
  readonly low: number;
  readonly high: number;
}

const EXTRACT =
  "Extract in the dry substance, by the laboratory’s fine grind. The mash reaches a little less of it; the kettle says how much.";
const MOISTURE = "Water in the ingredient as it is weighed. It brings no extract.";
const COLOUR = "Colour of the laboratory’s wort of it; the recipe adds the colours by mass.";
const ALPHA = "Alpha acids of the hops as weighed, which the boil turns into bitterness.";
const STRENGTH = "Pure acid by mass of the solution.";
const DENSITY = "Mass of a litre of the solution, by which millilitres become grams.";

type Of<T, K> = Extract<T, { readonly kind: K }>;

/** What is usual of an ingredient, in the order in which it is asked for. */
export function ingredientFigures(what: KindAndFigures): readonly IngredientFigure[] {
  switch (what.kind) {
    case "fermentable":
      return fermentable(what.figures);
    case "hop":
      return hop(what.figures);
    case "yeast":
      return yeast(what.figures);
    case "salt":
      return [
        {
          label: "Salt",
          means: "Its ions follow from its formula.",
          value: SALT_FIELDS[what.figures.salt].label,
          dimension: null,
        },
      ];
    case "acid":
      return [
        {
          label: "Acid",
          means: "It decides how many protons a gram gives off at the mash pH.",
          value: what.figures.acid,
          dimension: null,
        },
        { label: "Strength", means: STRENGTH, value: what.figures.massFraction, dimension: "fraction" },
        { label: "Density", means: DENSITY, value: what.figures.density, dimension: null, unit: "kg/L" },
      ];
  }
}

function fermentable(figures: Of<KindAndFigures, "fermentable">["figures"]): readonly IngredientFigure[] {
  const { acidity } = figures;
  return [
    { label: "Extract yield", means: EXTRACT, value: figures.extract, dimension: "fraction" },
    { label: "Moisture", means: MOISTURE, value: figures.moisture, dimension: "fraction" },
    { label: "Malt colour", means: COLOUR, value: figures.colour, dimension: "colour" },
    {
      label: "Fermentability",
      means: "Share of its extract that yeast takes; without one, the mash and the yeast decide.",
      value: figures.fermentability,
      dimension: "fraction",
    },
    ...(acidity === null ? [] : acidityFigures(acidity)),
  ];
}

type Acidity = NonNullable<Of<KindAndFigures, "fermentable">["figures"]["acidity"]>;

function acidityFigures({ distilledWaterPh, buffering, lacticFraction }: Acidity): readonly IngredientFigure[] {
  return [
    {
      label: "Distilled-water pH",
      means: "pH of a mash of this alone in distilled water, at room temperature.",
      value: distilledWaterPh,
      dimension: "ph",
    },
    {
      label: "Buffering",
      means: "Base that moves the pH of a kilogram of it by one.",
      value: buffering,
      dimension: null,
      unit: "mEq/(kg·pH)",
    },
    {
      label: "Lactic acid",
      means: "Lactic acid that it carries, by mass.",
      value: lacticFraction,
      dimension: "fraction",
    },
  ];
}

function hop(figures: Of<KindAndFigures, "hop">["figures"]): readonly IngredientFigure[] {
  return [
    {
      label: "Alpha acids",
      means: `${ALPHA} A recipe that names the hop takes the middle, until the packet says better.`,
      value: { low: figures.alphaLow, high: figures.alphaHigh },
      dimension: "fraction",
    },
    {
      label: "Alpha acids lost in six months at 20 °C",
      means: "In the open. By it a lot’s age, store and packaging become its alpha acids today.",
      value: figures.lossIn6Months,
      dimension: "fraction",
    },
  ];
}

function yeast(figures: Of<KindAndFigures, "yeast">["figures"]): readonly IngredientFigure[] {
  return [
    {
      label: "Apparent attenuation",
      means: "By how much the extract seems to fall, on an ordinary wort.",
      value: { low: figures.attenuationLow, high: figures.attenuationHigh },
      dimension: "fraction",
    },
    {
      label: "Fermentation temperature",
      means: "Where it works as it is meant to.",
      value: { low: figures.celsiusLow, high: figures.celsiusHigh },
      dimension: "temperature",
    },
  ];
}

/** What the analysis of one lot says; what it does not say is left to the ingredient. */
export function lotFigureList(what: LotKindAndFigures): readonly IngredientFigure[] {
  switch (what.kind) {
    case "fermentable":
      return [
        { label: "Extract yield", means: EXTRACT, value: what.figures.extract, dimension: "fraction" },
        { label: "Moisture", means: MOISTURE, value: what.figures.moisture, dimension: "fraction" },
        { label: "Malt colour", means: COLOUR, value: what.figures.colour, dimension: "colour" },
      ];
    case "hop":
      return hopLot(what.figures);
    case "yeast":
      return yeastLot(what.figures);
    case "salt":
      return [];
    case "acid":
      return [
        { label: "Strength", means: STRENGTH, value: what.figures.massFraction, dimension: "fraction" },
        { label: "Density", means: DENSITY, value: what.figures.density, dimension: null, unit: "kg/L" },
      ];
  }
}

const STORE = "Temperature of the place where it has been since then.";

function hopLot(figures: Of<LotKindAndFigures, "hop">["figures"]): readonly IngredientFigure[] {
  return [
    { label: "Alpha acids as analysed", means: ALPHA, value: figures.alpha, dimension: "fraction" },
    {
      label: "Analysed on",
      means: "About the harvest; its age counts from here.",
      value: figures.analysedOn,
      dimension: null,
    },
    { label: LOT_STORAGE_FIELDS.storedAt.label, means: STORE, value: figures.storedAt, dimension: "temperature" },
    { label: "Packaging", means: "How much air comes in.", value: figures.packaging, dimension: null },
  ];
}

function yeastLot(figures: Of<LotKindAndFigures, "yeast">["figures"]): readonly IngredientFigure[] {
  return [
    {
      label: "Form",
      means: "Dry yeast keeps for years, liquid yeast for weeks.",
      value: figures.form,
      dimension: null,
    },
    {
      label: LOT_STORAGE_FIELDS.cells.label,
      means: "As the maker states it.",
      value: figures.cells,
      dimension: "cells",
    },
    { label: "Packed on", means: "Its age counts from here.", value: figures.packedOn, dimension: null },
    { label: LOT_STORAGE_FIELDS.storedAt.label, means: STORE, value: figures.storedAt, dimension: "temperature" },
  ];
}
