import type { Dimension, Recipe } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

interface SheetAmountsProps {
  readonly recipe: Recipe;
  readonly preferences: Preferences;
}

interface Amount {
  readonly key: string;
  readonly name: string;
  readonly value: number;
  readonly dimension: Dimension;
}

const USE = { boil: "in the boil", stand: "in the stand", dry: "dry" } as const;

/** What the member weighs out. */
export function SheetAmounts({ recipe, preferences }: SheetAmountsProps) {
  return (
    <DataTable<Amount>
      caption="Amounts on this kettle"
      captionHidden
      columns={[
        { id: "name", label: "Ingredient", cell: ({ name }) => name },
        {
          id: "amount",
          label: "Amount",
          isNumber: true,
          cell: ({ value, dimension }) => <Quantity {...{ value, dimension, preferences }} />,
        },
      ]}
      records={amountsOf(recipe)}
      keyOf={({ key }) => key}
    />
  );
}

function amountsOf({ fermentables, hops }: Recipe): readonly Amount[] {
  return [
    ...fermentables.map(({ name, kg }, i) => ({ key: `malt ${i}`, name, value: kg, dimension: "mass" as const })),
    ...hops.map(({ name, grams, use, minutes }, i) => ({
      key: `hop ${i}`,
      name: `${name}, ${USE[use]}${use === "dry" ? "" : `, ${minutes} min`}`,
      value: grams,
      dimension: "grams" as const,
    })),
  ];
}
