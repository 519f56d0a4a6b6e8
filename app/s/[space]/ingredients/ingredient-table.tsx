import Link from "next/link";
import type { Fraction } from "@/lib/calc/units";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { amountText } from "@/lib/ui/ingredient/amount-text";
import { KIND_WORDS, SOURCE_WORDS } from "@/lib/ui/ingredient/kind-words";
import { BestBefore } from "./best-before";
import type { IngredientRow } from "./ingredient-rows";
import { viewQuery, type IngredientSort, type IngredientView } from "./ingredient-view";
import { RowFigures } from "./row-figures";

interface IngredientTableProps {
  /** Address of the ingredients of the space. */
  readonly home: string;
  readonly rows: readonly IngredientRow[];
  readonly view: IngredientView;
  readonly lossOf: (name: string) => Fraction | null;
  readonly today: string;
  readonly preferences: Preferences;
}

/** Ingredients and lots, a line each; the order belongs to the address. */
export function IngredientTable({ home, rows, view, lossOf, today, preferences }: IngredientTableProps) {
  const sortable = (id: IngredientSort) => {
    const isThis = view.sort === id;
    const next = viewQuery({ ...view, sort: id, isDescending: isThis && !view.isDescending });
    const direction: "ascending" | "descending" = view.isDescending ? "descending" : "ascending";
    return { id, sortHref: home + next, ...(isThis ? { sorted: direction } : {}) };
  };
  const columns: readonly DataColumn<IngredientRow>[] = [
    { ...sortable("name"), label: "Ingredient", cell: (row) => <RowName home={home} row={row} /> },
    { ...sortable("kind"), label: "Kind", cell: ({ kind }) => KIND_WORDS[kind].one },
    { ...sortable("whose"), label: "Whose", cell: ({ whose }) => whose },
    {
      id: "figures",
      label: "Figures",
      cell: (row) => <RowFigures row={row} lossOf={lossOf} today={today} preferences={preferences} />,
    },
    { id: "source", label: "From", cell: sourceOf },
    {
      ...sortable("onHand"),
      label: "On hand",
      isNumber: true,
      cell: ({ onHand, kind }) => (onHand === null ? <None why="no lot" /> : amountText(onHand, kind, preferences)),
    },
    {
      ...sortable("bestBefore"),
      label: "Best before",
      cell: ({ bestBefore }) =>
        bestBefore === null ? <None why="not stated" /> : <BestBefore day={bestBefore} today={today} />,
    },
  ];
  return (
    <DataTable caption="Ingredients and lots" captionHidden columns={columns} records={rows} keyOf={({ key }) => key} />
  );
}

function RowName({ home, row }: { readonly home: string; readonly row: IngredientRow }) {
  const { path, name, label, type } = row;
  return (
    <Link href={`${home}/${path}`} className="target">
      {name}
      {type === "lot" ? <span className="font-normal">, {label}</span> : null}
    </Link>
  );
}

function sourceOf(row: IngredientRow): string {
  if (row.type === "generic") return SOURCE_WORDS[row.generic.source].short;
  return row.type === "club" ? "the club’s figures" : "its analysis";
}

function None({ why }: { readonly why: string }) {
  return (
    <span className="text-muted" title={why}>
      <span aria-hidden>—</span>
      <span className="sr-only">{why}</span>
    </span>
  );
}
