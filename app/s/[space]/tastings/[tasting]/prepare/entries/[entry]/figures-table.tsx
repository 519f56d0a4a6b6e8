import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { BeerFigure, PlacedFigure, StyleCheck } from "@/lib/model/tasting/prepare-figures";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

interface FiguresTableProps {
  readonly figures: readonly BeerFigure[];
  /** Against the style that it is judged as. */
  readonly check: StyleCheck | null;
  readonly preferences: Preferences;
}

const FROM = { measured: "measured", computed: "computed, 80 % interval", stated: "said by its brewer" } as const;

/** What is known of an entry, and how it stands to the published numbers of its style. */
export function FiguresTable({ figures, check, preferences }: FiguresTableProps) {
  const placeOf = (quantity: string): PlacedFigure | undefined =>
    check?.figures.find((each) => each.quantity === quantity);
  const columns: readonly DataColumn<BeerFigure>[] = [
    { id: "quantity", label: "Figure", cell: ({ quantity }) => QUANTITIES[quantity].label },
    {
      id: "value",
      label: "This beer",
      isNumber: true,
      cell: ({ quantity, value, interval }) => (
        <Quantity
          value={value}
          interval={interval}
          dimension={QUANTITIES[quantity].dimension}
          preferences={preferences}
        />
      ),
    },
    { id: "from", label: "Known from", cell: ({ from }) => FROM[from] },
    ...(check === null ? [] : againstStyle(placeOf, preferences)),
  ];
  return (
    <section aria-labelledby="figures" className="mt-6">
      <h2 id="figures" className="mb-2">
        {check === null ? "Figures" : `Figures against ${check.code} ${check.name}`}
      </h2>
      {figures.length === 0 ? (
        <p className="text-muted">Nothing is known of its figures, so no style is nearer than another.</p>
      ) : (
        <DataTable
          caption="Figures of the entry"
          captionHidden
          columns={columns}
          records={figures}
          keyOf={({ quantity }) => quantity}
        />
      )}
    </section>
  );
}

function againstStyle(
  placeOf: (quantity: string) => PlacedFigure | undefined,
  preferences: Preferences,
): readonly DataColumn<BeerFigure>[] {
  const shown = ({ quantity }: BeerFigure) => ({ dimension: QUANTITIES[quantity].dimension, preferences });
  return [
    {
      id: "range",
      label: "Style",
      isNumber: true,
      cell: (figure) => (
        <>
          <Quantity {...shown(figure)} value={placeOf(figure.quantity)?.span.low ?? null} /> to{" "}
          <Quantity {...shown(figure)} value={placeOf(figure.quantity)?.span.high ?? null} />
        </>
      ),
    },
    {
      id: "place",
      label: "Stands",
      cell: (figure) => {
        const placed = placeOf(figure.quantity);
        const outsideBy = placed?.place.outsideBy ?? 0;
        if (placed === undefined || outsideBy === 0) return "inside";
        const bound = outsideBy > 0 ? placed.span.high : placed.span.low;
        return (
          <>
            outside by <Quantity {...shown(figure)} value={placed.value} differenceFrom={bound} />
          </>
        );
      },
    },
    {
      id: "chance",
      label: "Chance of being inside",
      isNumber: true,
      cell: ({ quantity }) => (
        <Quantity
          value={placeOf(quantity)?.place.chanceInside ?? null}
          dimension="fraction"
          digits={0}
          preferences={preferences}
          reason="its uncertainty is not known"
        />
      ),
    },
  ];
}
