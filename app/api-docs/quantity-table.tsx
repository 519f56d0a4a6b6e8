import { loggedLabel } from "@/lib/model/log/log-event-input";
import { LOGGED_QUANTITIES, loggedRange } from "@/lib/model/log/series";
import { DataTable } from "@/lib/ui/data-table";

/** What can be measured, with the range that the log takes. */
export function QuantityTable() {
  const rows = LOGGED_QUANTITIES.map((quantity) => ({ quantity, ...loggedRange(quantity) }));
  return (
    <DataTable
      caption="Quantities"
      captionHidden
      columns={[
        {
          id: "quantity",
          label: "Quantity",
          cell: ({ quantity }) => <code className="whitespace-nowrap">{quantity}</code>,
        },
        { id: "what", label: "What is measured", cell: ({ quantity }) => loggedLabel(quantity) },
        { id: "range", label: "Range", cell: ({ min, max, unit }) => `${String(min)} to ${String(max)} ${unit}` },
      ]}
      records={rows}
      keyOf={({ quantity }) => quantity}
    />
  );
}
