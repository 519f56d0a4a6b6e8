import type { StyleCheck } from "@/lib/model/tasting/prepare-figures";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { fixedDigits } from "@/lib/ui/fixed-digits";

interface NearestTableProps {
  readonly nearest: readonly StyleCheck[];
}

const DIGITS = 2;

/** The styles whose published numbers are nearest, the nearest first. */
export function NearestTable({ nearest }: NearestTableProps) {
  if (nearest.length === 0) return null;
  const columns: readonly DataColumn<StyleCheck>[] = [
    { id: "style", label: "Style", cell: ({ code, name }) => `${code} ${name}` },
    {
      id: "distance",
      label: "Distance, half-widths",
      isNumber: true,
      cell: ({ distance }) => fixedDigits(distance, DIGITS),
    },
    {
      id: "centre",
      label: "From the middle, half-widths",
      isNumber: true,
      cell: ({ offCentre }) => fixedDigits(offCentre, DIGITS),
    },
    {
      id: "inside",
      label: "Figures inside",
      cell: ({ figures }) =>
        `${String(figures.filter(({ place }) => place.outsideBy === 0).length)} of ${String(figures.length)}`,
    },
  ];
  return (
    <section aria-labelledby="nearest" className="mt-6">
      <h2 id="nearest">Nearest styles by their numbers</h2>
      <p className="mb-2 text-muted">Numbers alone: two beers that taste nothing alike may share them.</p>
      <DataTable
        caption="Nearest styles"
        captionHidden
        columns={columns}
        records={nearest}
        keyOf={({ code }) => code}
      />
    </section>
  );
}
