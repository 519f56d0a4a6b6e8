import type { Fraction } from "@/lib/calc/units";
import { lotToday } from "@/lib/model/lot-today";
import type { Preferences } from "@/lib/model/preferences";
import { FigureValue } from "@/lib/ui/ingredient/figure-value";
import { ingredientFigures, lotFigureList, type IngredientFigure } from "@/lib/ui/ingredient/ingredient-figures";
import type { IngredientRow } from "./ingredient-rows";

interface RowFiguresProps {
  readonly row: IngredientRow;
  readonly lossOf: (name: string) => Fraction | null;
  readonly today: string;
  readonly preferences: Preferences;
}

/** The figures by which one ingredient is told from another; all of them stand on its page. */
const TELLING: readonly string[] = [
  "Extract yield",
  "Malt colour",
  "Alpha acids",
  "Alpha acids today",
  "Apparent attenuation",
  "Form",
  "Strength",
];

/** The few figures of a row that tell it apart, in one line. */
export function RowFigures({ row, lossOf, today, preferences }: RowFiguresProps) {
  const figures = figuresOf(row, lossOf, today).filter(({ label, value }) => TELLING.includes(label) && value !== null);
  if (figures.length === 0) return <span className="text-muted">{row.type === "lot" ? "no analysis" : row.label}</span>;
  return (
    <ul className="flex flex-wrap gap-x-4">
      {figures.map((figure) => (
        <li key={figure.label}>
          <span className="text-muted">{figure.label}</span> <FigureValue figure={figure} preferences={preferences} />
        </li>
      ))}
    </ul>
  );
}

function figuresOf(row: IngredientRow, lossOf: RowFiguresProps["lossOf"], today: string): readonly IngredientFigure[] {
  if (row.type === "generic") return ingredientFigures(row.generic.what);
  if (row.type === "club") return ingredientFigures(row.own.what);
  const { what, name } = row.lot;
  const asToday = lotToday(what, lossOf(name), today);
  if (asToday.kind !== "hop") return lotFigureList(what);
  return [{ label: "Alpha acids today", means: "", value: asToday.figures.alpha, dimension: "fraction" }];
}
