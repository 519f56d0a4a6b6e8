import Link from "next/link";
import type { RevisionSummary } from "@/lib/model/recipe-content";
import { DataTable } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";

interface RevisionListProps {
  readonly home: string;
  readonly revisions: readonly RevisionSummary[];
}

/** Every text that this recipe has had. */
export function RevisionList({ home, revisions }: RevisionListProps) {
  return (
    <section id="revisions" aria-labelledby="revisions-heading" className="no-print mt-10">
      <h2 id="revisions-heading" className="mb-3">
        Revisions
      </h2>
      <DataTable
        caption="Revisions, the newest first"
        captionHidden
        columns={[
          {
            id: "rev",
            label: "Revision",
            cell: ({ rev }) => (
              <Link href={`${home}/revisions/${rev}`} className="target">
                Revision {rev}
              </Link>
            ),
          },
          { id: "message", label: "Note", cell: ({ message }) => message || "—" },
          { id: "author", label: "By", cell: ({ authorName }) => authorName },
          { id: "day", label: "Saved", cell: ({ createdAt }) => <Day at={createdAt} /> },
        ]}
        records={revisions}
        keyOf={({ rev }) => String(rev)}
      />
    </section>
  );
}
