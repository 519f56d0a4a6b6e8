import Link from "next/link";
import { styleNamed } from "@/lib/model/tasting/prepare-figures";
import type { RevealedEntry, Tasting } from "@/lib/model/tasting/tasting";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";

interface RevealedTableProps {
  readonly home: string;
  readonly tasting: Tasting;
}

/** Which entry was which beer, once that is told. */
export function RevealedTable({ home, tasting }: RevealedTableProps) {
  const { revealed, revealedAt, revealedByName } = tasting;
  if (revealed === null) return null;
  const columns: readonly DataColumn<RevealedEntry>[] = [
    { id: "code", label: "Blind code", cell: ({ entryNo }) => entryNo },
    {
      id: "beer",
      label: "Beer",
      cell: ({ beer, brewId }) =>
        brewId === null ? (
          beer
        ) : (
          <Link className="target" href={`${home}/brews/${brewId}`}>
            {beer}
          </Link>
        ),
    },
    { id: "brewer", label: "Brewer", cell: ({ brewer }) => (brewer === "" ? "not named" : brewer) },
    { id: "style", label: "Judged as", cell: ({ styleCode }) => styleNamed(styleCode)?.name ?? "no style" },
  ];
  return (
    <section aria-labelledby="revealed" className="mt-6">
      <h2 id="revealed">What was in the glasses</h2>
      <p className="mb-2 text-muted">
        Revealed by {revealedByName ?? "an organiser"}
        {revealedAt === null ? null : (
          <>
            {" "}
            on <Day at={revealedAt} />
          </>
        )}
        .
      </p>
      <DataTable
        caption="What was in the glasses"
        captionHidden
        columns={columns}
        records={revealed}
        keyOf={({ entryNo }) => String(entryNo)}
      />
    </section>
  );
}
