import Link from "next/link";
import type { Preferences } from "@/lib/model/preferences";
import type { RowLots } from "@/lib/model/row-lots";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { amountText } from "@/lib/ui/ingredient/amount-text";
import { Quantity } from "@/lib/ui/quantity";

interface LotsTableProps {
  readonly space: string;
  readonly rows: readonly RowLots[];
  readonly preferences: Preferences;
}

const DIMENSION = { fermentable: "mass", hop: "grams" } as const;

/** The rows that are taken from lots: how much instead of how much, and what is missing. */
export function LotsTable({ space, rows, preferences }: LotsTableProps) {
  return (
    <DataTable<RowLots>
      caption="With the lots chosen"
      columns={[
        { id: "row", label: "Row", cell: ({ writtenName }) => writtenName },
        { id: "lot", label: "Lot", cell: (row) => <LotLink space={space} row={row} /> },
        ...amountColumns(preferences),
        { id: "onHand", label: "On hand", cell: (row) => <Shelf row={row} preferences={preferences} /> },
      ]}
      records={rows}
      keyOf={({ path }) => path}
    />
  );
}

function amountColumns(preferences: Preferences): readonly DataColumn<RowLots>[] {
  const quantity = (kind: RowLots["kind"]) => ({ dimension: DIMENSION[kind], preferences });
  return [
    {
      id: "generic",
      label: "By the recipe’s figures",
      isNumber: true,
      cell: ({ generic, kind }) => <Quantity {...quantity(kind)} value={generic} reason="not in it" />,
    },
    {
      id: "amount",
      label: "With the lot",
      isNumber: true,
      cell: ({ amount, kind }) => <Quantity {...quantity(kind)} value={amount} />,
    },
    {
      id: "difference",
      label: "Difference",
      isNumber: true,
      cell: ({ amount, generic, kind }) => (
        <Quantity
          {...quantity(kind)}
          value={generic === null ? null : amount}
          differenceFrom={generic ?? undefined}
          reason="not in it"
        />
      ),
    },
  ];
}

function LotLink({ space, row }: { readonly space: string; readonly row: RowLots }) {
  const { chosen, name, writtenName } = row;
  if (chosen === null) return null;
  return (
    <>
      {name === writtenName ? null : `${name}: `}
      <Link href={`/s/${space}/ingredients/lots/${chosen.lot.id}`} className="target">
        {chosen.lot.label}
      </Link>
    </>
  );
}

/** What there is of the lot, and what it lacks of the row. */
function Shelf({ row, preferences }: { readonly row: RowLots; readonly preferences: Preferences }) {
  const { chosen, kind, short } = row;
  return (
    <>
      {chosen === null ? null : amountText(chosen.lot.onHand, kind, preferences)}
      {short === null || short === 0 ? null : <strong>, {amountText(short, kind, preferences)} short</strong>}
    </>
  );
}
