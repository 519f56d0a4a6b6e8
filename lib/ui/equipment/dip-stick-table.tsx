import type { DipStickMark, DipStickTable } from "@/lib/calc/kettle";
import type { Preferences } from "@/lib/model/preferences";
import type { ReactElement } from "react";
import { DataTable } from "../data-table";
import { intervalOfSd } from "../brew/interval-of-sd";
import { Quantity } from "../quantity";

interface DipStickTableProps {
  readonly table: DipStickTable;
  readonly caption: string;
  readonly preferences: Preferences;
}

/** Which depth or mark stands for how much. */
export function DipStickTableView({ table, caption, preferences }: DipStickTableProps): ReactElement {
  return (
    <DataTable<DipStickMark>
      caption={caption}
      columns={[
        {
          id: "reading",
          label: table.unit === "mm" ? "Depth, mm" : "Mark",
          cell: ({ reading }) => String(reading),
        },
        {
          id: "litres",
          label: "Holds",
          isNumber: true,
          cell: ({ litres, sd }) => (
            <Quantity value={litres} dimension="volume" interval={intervalOfSd(litres, sd)} preferences={preferences} />
          ),
        },
      ]}
      records={table.marks}
      keyOf={({ reading }) => String(reading)}
    />
  );
}
