import { QUANTITIES, type Ledger, type QuantityId } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

/** What somebody asks first about a recipe that was changed. */
const COMPARED: readonly QuantityId[] = [
  "fermenter.volume",
  "fermenter.originalExtract",
  "package.alcohol",
  "fermenter.bitterness",
  "fermenter.colour",
  "fermenter.efficiency",
  "mash.grist",
  "water.total",
  "kettle.heatingTime",
  "day.time",
  "day.energy",
];

interface ComparisonTableProps {
  readonly caption: string;
  readonly written: Ledger;
  readonly here: Ledger;
  readonly preferences: Preferences;
}

/** The recipe as written beside what it becomes here, with the difference. */
export function ComparisonTable({ caption, written, here, preferences }: ComparisonTableProps) {
  const columns: readonly DataColumn<QuantityId>[] = [
    { id: "quantity", label: "Quantity", cell: (id) => QUANTITIES[id].label },
    {
      id: "written",
      label: "As written",
      isNumber: true,
      cell: (id) => <Quantity {...shown(id, preferences)} value={written.quantities[id]} />,
    },
    {
      id: "here",
      label: "Here",
      isNumber: true,
      cell: (id) => <Quantity {...shown(id, preferences)} value={here.quantities[id]} />,
    },
    {
      id: "difference",
      label: "Difference",
      isNumber: true,
      cell: (id) => (
        <Quantity
          {...shown(id, preferences)}
          value={here.quantities[id]}
          differenceFrom={written.quantities[id] ?? undefined}
        />
      ),
    },
  ];
  return <DataTable caption={caption} columns={columns} records={COMPARED} keyOf={(id) => id} />;
}

function shown(id: QuantityId, preferences: Preferences) {
  return { dimension: QUANTITIES[id].dimension, preferences };
}
