import type { Dimension, Recipe } from "@/lib/calc/ledger";
import { SALTS, type AcidSolution } from "@/lib/calc/water";
import type { Preferences } from "@/lib/model/preferences";
import { SALT_FIELDS } from "@/lib/model/recipe-fields";
import { DataTable } from "@/lib/ui/data-table";
import { fixedDigits } from "@/lib/ui/fixed-digits";
import { Quantity } from "@/lib/ui/quantity";
import { ACID_LABELS, acidName } from "@/lib/ui/recipe/acid-names";

interface SheetAmountsProps {
  readonly recipe: Recipe;
  readonly preferences: Preferences;
}

interface Amount {
  readonly key: string;
  readonly name: string;
  readonly value: number;
  /** Acid is poured by the millilitre, which no quantity of the ledger is. */
  readonly dimension: Dimension | "mL";
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
          cell: ({ value, dimension }) =>
            dimension === "mL" ? `${fixedDigits(value, 1)} mL` : <Quantity {...{ value, dimension, preferences }} />,
        },
      ]}
      records={amountsOf(recipe)}
      keyOf={({ key }) => key}
    />
  );
}

function amountsOf({ fermentables, hops, water }: Recipe): readonly Amount[] {
  const { salts, acid } = water;
  return [
    ...SALTS.flatMap((salt) => {
      const value = salts[salt] ?? 0;
      return value === 0 ? [] : [{ key: salt, name: SALT_FIELDS[salt].label, value, dimension: "grams" as const }];
    }),
    ...(acid === null
      ? []
      : [{ key: "acid", name: acidLabel(acid.solution), value: acid.ml, dimension: "mL" as const }]),
    ...fermentables.map(({ name, kg }, i) => ({ key: `malt ${i}`, name, value: kg, dimension: "mass" as const })),
    ...hops.map(({ name, grams, use, minutes }, i) => ({
      key: `hop ${i}`,
      name: `${name}, ${USE[use]}${use === "dry" ? "" : `, ${minutes} min`}`,
      value: grams,
      dimension: "grams" as const,
    })),
  ];
}

function acidLabel(solution: AcidSolution): string {
  const name = acidName(solution);
  return name === null ? "Acid" : ACID_LABELS[name];
}
