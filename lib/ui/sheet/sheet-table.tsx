import type { ReactElement } from "react";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "../data-table";
import { fixedDigits } from "../fixed-digits";
import { Quantity } from "../quantity";
import type { SheetRow } from "./sheet-rows";

/** What to weigh and pour, with a box to tick. */
export function SheetTable(props: {
  readonly rows: readonly SheetRow[];
  readonly preferences: Preferences;
}): ReactElement {
  const { rows, preferences } = props;
  return (
    <DataTable<SheetRow>
      caption="What goes in"
      columns={[
        { id: "name", label: "Ingredient", cell: ({ name }) => name },
        { id: "when", label: "Where", cell: ({ when }) => when },
        {
          id: "amount",
          label: "Amount",
          isNumber: true,
          cell: ({ value, dimension }) =>
            dimension === null ? (
              `${fixedDigits(value, 1)} mL`
            ) : (
              <Quantity value={value} dimension={dimension} preferences={preferences} />
            ),
        },
        {
          id: "gives",
          label: "Gives",
          isNumber: true,
          cell: ({ gives }) =>
            gives === null ? null : (
              <Quantity value={gives.value} dimension={gives.dimension} preferences={preferences} />
            ),
        },
        { id: "done", label: "Done", cell: () => <span className="sheet-box" /> },
      ]}
      records={rows}
      keyOf={({ key }) => key}
    />
  );
}
