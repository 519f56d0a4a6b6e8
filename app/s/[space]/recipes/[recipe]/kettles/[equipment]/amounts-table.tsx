import type { Dimension, Recipe } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

interface Amount {
  readonly key: string;
  readonly name: string;
  readonly dimension: Dimension;
  readonly written: number | null;
  readonly here: number;
}

interface AmountsTableProps {
  readonly caption: string;
  readonly written: Recipe;
  readonly here: Recipe;
  readonly preferences: Preferences;
}

/** Each ingredient as written and here. */
export function AmountsTable({ caption, written, here, preferences }: AmountsTableProps) {
  const amounts = [...fermentables(written, here), ...hops(written, here)];
  return (
    <DataTable<Amount>
      caption={caption}
      columns={[
        { id: "name", label: "Ingredient", cell: ({ name }) => name },
        {
          id: "written",
          label: "As written",
          isNumber: true,
          cell: ({ written: value, dimension }) => (
            <Quantity {...{ value, dimension, preferences }} reason="not in the recipe as written" />
          ),
        },
        {
          id: "here",
          label: "Here",
          isNumber: true,
          cell: ({ here: value, dimension }) => <Quantity {...{ value, dimension, preferences }} />,
        },
      ]}
      records={amounts}
      keyOf={({ key }) => key}
    />
  );
}

// The adapted recipe keeps the rows of the written one and their order; a way out may add some at the end.
function fermentables(written: Recipe, here: Recipe): Amount[] {
  return here.fermentables.map((row, i) => {
    const same = written.fermentables.at(i);
    return {
      key: `fermentable ${i}`,
      name: row.name,
      dimension: "mass",
      written: same?.name === row.name ? same.kg : null,
      here: row.kg,
    };
  });
}

const USE = { boil: "in the boil", stand: "in the stand", dry: "dry" } as const;

function hops(written: Recipe, here: Recipe): Amount[] {
  return here.hops.map((hop, i) => ({
    key: `hop ${i}`,
    name: `${hop.name}, ${USE[hop.use]}${hop.use === "dry" ? "" : `, ${hop.minutes} min`}`,
    dimension: "grams",
    written: written.hops.at(i)?.grams ?? null,
    here: hop.grams,
  }));
}
