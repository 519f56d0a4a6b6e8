import { FLIGHT_KIND_WORDS, isDifferenceTest } from "@/lib/model/tasting/tasting";
import type { JudgeGlasses, PouredFlight } from "@/lib/server/tastings/pour-list";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";

interface PourTableProps {
  readonly flight: PouredFlight;
}

/** A flight by judge and place; of a test the numbers of the glasses, and for the steward from which bottle each is filled. */
export function PourTable({ flight }: PourTableProps) {
  const { flightNo, title, kind, judges, bottles } = flight;
  const places = Math.max(0, ...judges.map(({ codes }) => codes.length));
  const columns: readonly DataColumn<JudgeGlasses>[] = [
    { id: "judge", label: "Judge", cell: ({ judge }) => judge.name },
    ...Array.from({ length: places }, (_, at): DataColumn<JudgeGlasses> => ({
      id: String(at),
      label: kind === "duo-trio" && at === 0 ? "Reference" : `Glass ${String(at + 1)}`,
      isNumber: true,
      cell: ({ codes }) => codes[at] ?? "",
    })),
  ];
  return (
    <section aria-labelledby={`flight-${String(flightNo)}`} className="pour-flight mt-6">
      <h2 id={`flight-${String(flightNo)}`}>{title}</h2>
      <p className="mb-2 text-muted">
        {FLIGHT_KIND_WORDS[kind]}; bottles {bottles.join(", ")}.
      </p>
      <DataTable
        caption={`Glasses of ${title}`}
        captionHidden
        columns={columns}
        records={judges}
        keyOf={({ judge }) => judge.userId}
      />
      {isDifferenceTest(kind) ? <GlassKey flight={flight} /> : null}
    </section>
  );
}

function GlassKey({ flight }: PourTableProps) {
  const { key, bottles } = flight;
  if (key === null) {
    return (
      <p className="mt-2">The steward fills the numbered glasses out of sight; you carry them by their numbers.</p>
    );
  }
  return (
    <div className="pour-key">
      <h3 className="mt-4">For you alone: fill from</h3>
      <ul>
        {bottles.map((bottle) => (
          <li key={bottle}>
            bottle {bottle}: glasses{" "}
            {[...key]
              .flatMap(([glass, from]) => (from === bottle ? [glass] : []))
              .sort((a, b) => a - b)
              .join(", ")}
          </li>
        ))}
      </ul>
    </div>
  );
}
