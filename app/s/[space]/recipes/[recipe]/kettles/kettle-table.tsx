import Link from "next/link";
import { limitWords } from "@/lib/calc/explain";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { limitNumbers } from "@/lib/ui/equipment/limit-numbers";
import { Quantity } from "@/lib/ui/quantity";
import { hopGrams, quantityOf, type KettleRow } from "./kettle-rows";
import { NUMBER_COLUMNS, viewQuery, type KettleView, type NumberColumn, type SortColumn } from "./kettle-view";

interface KettleTableProps {
  readonly home: string;
  readonly rows: readonly KettleRow[];
  readonly view: KettleView;
  readonly preferences: Preferences;
}

/** The recipe on every kettle of the space, a row each. */
export function KettleTable({ home, rows, view, preferences }: KettleTableProps) {
  const sheet = ({ profile }: KettleRow): string => {
    const { rev, volume } = view;
    return `${home}/kettles/${profile.id}${viewQuery({ ...ALL, rev, volume })}`;
  };
  const columns: readonly DataColumn<KettleRow>[] = [
    {
      id: "kettle",
      label: "Kettle",
      ...sorting("kettle", home, view),
      cell: (row) => (
        <Link href={sheet(row)} className="target">
          {row.profile.equipment.name}
        </Link>
      ),
    },
    { id: "brewer", label: "Brewer", ...sorting("brewer", home, view), cell: ({ profile }) => profile.ownerName },
    {
      id: "fit",
      label: "Fits",
      ...sorting("fit", home, view),
      cell: (row) => <Fit row={row} preferences={preferences} />,
    },
    ...NUMBER_COLUMNS.map(({ id, label }) => ({
      id,
      label,
      isNumber: true,
      ...sorting(id, home, view),
      cell: (row: KettleRow) => (
        // The name of the kettle leads to the same place; the keyboard need not stop at every number.
        <Link href={sheet(row)} tabIndex={-1} className="no-underline hover:underline">
          <KettleNumber row={row} id={id} preferences={preferences} />
        </Link>
      ),
    })),
  ];
  return (
    <DataTable
      caption="The recipe on every kettle; a name leads to that kettle’s own sheet"
      captionHidden
      columns={columns}
      records={rows}
      keyOf={({ profile }) => profile.id}
    />
  );
}

const ALL = { sort: "kettle", isDescending: false, fit: "all", brewer: null } as const;

function sorting(sort: SortColumn, home: string, view: KettleView): Pick<DataColumn<KettleRow>, "sortHref" | "sorted"> {
  const isSorted = view.sort === sort;
  const isDescending = isSorted && !view.isDescending;
  const sortHref = `${home}/kettles${viewQuery({ ...view, sort, isDescending })}`;
  return isSorted ? { sortHref, sorted: view.isDescending ? "descending" : "ascending" } : { sortHref };
}

function Fit({ row, preferences }: { readonly row: KettleRow; readonly preferences: Preferences }) {
  const { outcome } = row;
  if (outcome.ok) return <>Fits</>;
  const [first, ...others] = outcome.reasons;
  if (first === undefined)
    return <span className="text-accent">Does not fit: no grist reaches this strength here</span>;
  return (
    <span className="text-accent">
      Does not fit. {limitWords(first).title}: {limitNumbers(first, preferences)}
      {others.length === 0 ? null : `, and ${others.length} more`}
    </span>
  );
}

function KettleNumber(props: {
  readonly row: KettleRow;
  readonly id: NumberColumn;
  readonly preferences: Preferences;
}) {
  const { row, id, preferences } = props;
  if (id === "hops") {
    const digits = preferences.units === "us" ? 1 : 0;
    return <Quantity value={hopGrams(row)} dimension="grams" digits={digits} preferences={preferences} />;
  }
  return (
    <Quantity
      value={quantityOf(row, id)}
      dimension={QUANTITIES[id].dimension}
      interval={id === "fermenter.originalExtract" ? row.originalExtract : undefined}
      digits={id === "fermenter.efficiency" ? 0 : undefined}
      preferences={preferences}
    />
  );
}
