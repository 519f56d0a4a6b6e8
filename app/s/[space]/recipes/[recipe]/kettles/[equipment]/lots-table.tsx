import Link from "next/link";
import type { Dimension } from "@/lib/calc/ledger";
import { toThousandth } from "@/lib/model/lot-need";
import type { Preferences } from "@/lib/model/preferences";
import type { RowLots } from "@/lib/model/row-lots";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { amountText, changeText } from "@/lib/ui/ingredient/amount-text";
import { Quantity } from "@/lib/ui/quantity";

interface LotsTableProps {
  readonly space: string;
  readonly rows: readonly RowLots[];
  readonly preferences: Preferences;
}

/** Malt and hops are weighed in the reader's units; packs are counted, salts and acids measured alike everywhere. */
const DIMENSIONS: Readonly<Partial<Record<RowLots["kind"], Dimension>>> = { fermentable: "mass", hop: "grams" };

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
  return [
    {
      id: "generic",
      label: "By the recipe’s figures",
      isNumber: true,
      cell: ({ generic, kind }) => <Amount {...{ kind, preferences }} value={generic} />,
    },
    {
      id: "amount",
      label: "With the lot",
      isNumber: true,
      cell: ({ amount, kind }) => <Amount {...{ kind, preferences }} value={amount} />,
    },
    {
      id: "difference",
      label: "Difference",
      isNumber: true,
      cell: ({ amount, generic, kind }) => (
        <Amount {...{ kind, preferences }} value={generic === null ? null : amount} from={generic ?? undefined} />
      ),
    },
  ];
}

function Amount(props: {
  readonly kind: RowLots["kind"];
  readonly value: number | null;
  readonly from?: number | undefined;
  readonly preferences: Preferences;
}) {
  const { kind, value, from, preferences } = props;
  const dimension = DIMENSIONS[kind];
  if (dimension !== undefined || value === null) {
    return (
      <Quantity
        dimension={dimension ?? "grams"}
        value={value}
        differenceFrom={from}
        preferences={preferences}
        reason="not in it"
      />
    );
  }
  return (
    <>
      {from === undefined
        ? amountText(value, kind, preferences)
        : changeText(toThousandth(value - from), kind, preferences)}
    </>
  );
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
