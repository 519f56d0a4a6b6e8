import Link from "next/link";
import { dayInWords } from "@/lib/model/plain-day";
import { TASTING_STATE_WORDS, type TastingSummary } from "@/lib/model/tasting/tasting";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";

interface TastingTableProps {
  readonly home: string;
  readonly tastings: readonly TastingSummary[];
}

/** The tastings of a club, the newest first. */
export function TastingTable({ home, tastings }: TastingTableProps) {
  const columns: readonly DataColumn<TastingSummary>[] = [
    {
      id: "title",
      label: "Tasting",
      cell: ({ id, title }) => (
        <Link href={`${home}/tastings/${id}`} className="target">
          {title}
        </Link>
      ),
    },
    {
      id: "day",
      label: "Day",
      cell: ({ heldOn }) => (heldOn === null ? "no day yet" : dayInWords(heldOn)),
    },
    { id: "state", label: "State", cell: ({ state }) => TASTING_STATE_WORDS[state] },
    { id: "steward", label: "Steward", cell: ({ stewardName }) => stewardName },
  ];
  return <DataTable caption="Tastings" captionHidden columns={columns} records={tastings} keyOf={({ id }) => id} />;
}
