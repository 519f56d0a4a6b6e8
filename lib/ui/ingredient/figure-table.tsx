import type { ReactElement } from "react";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "../data-table";
import { FigureValue } from "./figure-value";
import type { IngredientFigure } from "./ingredient-figures";

interface FigureTableProps {
  readonly caption: string;
  readonly figures: readonly IngredientFigure[];
  readonly preferences: Preferences;
}

/** Every figure with what it means. */
export function FigureTable({ caption, figures, preferences }: FigureTableProps): ReactElement {
  return (
    <DataTable<IngredientFigure>
      caption={caption}
      columns={[
        { id: "figure", label: "Figure", cell: ({ label }) => label },
        { id: "value", label: "Value", cell: (figure) => <FigureValue figure={figure} preferences={preferences} /> },
        { id: "means", label: "What it is", cell: ({ means }) => means },
      ]}
      records={figures}
      keyOf={({ label }) => label}
    />
  );
}
