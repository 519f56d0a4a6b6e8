import Link from "next/link";
import { checkAgainst, styleNamed } from "@/lib/model/tasting/prepare-figures";
import type { KnownEntry, PreparedFlight } from "@/lib/server/tastings/preparation";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";

interface EntryTableProps {
  /** Of the entries. */
  readonly home: string;
  readonly flight: PreparedFlight;
}

/** The entries of a flight by blind code, with what they are. */
export function EntryTable({ home, flight }: EntryTableProps) {
  const columns: readonly DataColumn<KnownEntry>[] = [
    {
      id: "code",
      label: "Blind code",
      cell: ({ entryNo, beer }) => (
        <Link className="target" href={`${home}/${String(entryNo)}`}>
          {entryNo}
          <span className="sr-only">, {beer}</span>
        </Link>
      ),
    },
    { id: "beer", label: "Beer", cell: ({ beer }) => beer },
    { id: "brewer", label: "Brewer", cell: ({ brewer }) => (brewer === "" ? "not named" : brewer) },
    { id: "style", label: "Judged as", cell: ({ styleCode }) => styleNamed(styleCode)?.name ?? "no style yet" },
    { id: "figures", label: "Figures", cell: figuresInWords },
  ];
  return (
    <section aria-labelledby="entries" className="mt-6">
      <h2 id="entries" className="mb-2">
        Entries
      </h2>
      {flight.entries.length === 0 ? (
        <p className="text-muted">None yet.</p>
      ) : (
        <DataTable
          caption="Entries of the flight"
          captionHidden
          columns={columns}
          records={flight.entries}
          keyOf={({ entryNo }) => String(entryNo)}
        />
      )}
    </section>
  );
}

function figuresInWords({ figures, styleCode }: KnownEntry): string {
  if (figures.length === 0) return "none known";
  const style = styleNamed(styleCode);
  if (style === null) return "choose a style";
  const check = checkAgainst(figures, style);
  if (check === null) return "the style has none";
  const outside = check.figures.filter(({ place }) => place.outsideBy !== 0).length;
  return outside === 0 ? "all inside" : `${String(outside)} of ${String(check.figures.length)} outside`;
}
