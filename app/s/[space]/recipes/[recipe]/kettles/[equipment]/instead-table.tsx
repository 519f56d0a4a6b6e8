import { substitute, type FermentableStock, type HopStock, type Substitute, type Unfit } from "@/lib/calc/adapt";
import type { Ambient, Equipment, Recipe } from "@/lib/calc/ledger";
import { fermentableOfLot, hopOfLot } from "@/lib/model/lot";
import type { Preferences } from "@/lib/model/preferences";
import type { LotOffer, RowLots } from "@/lib/model/row-lots";
import { DataTable } from "@/lib/ui/data-table";
import { fixedDigits } from "@/lib/ui/fixed-digits";
import { amountText } from "@/lib/ui/ingredient/amount-text";

interface InsteadTableProps {
  readonly row: RowLots;
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly preferences: Preferences;
}

interface Candidate {
  readonly offer: LotOffer;
  /** null for one that cannot stand in. */
  readonly found: Substitute | null;
  readonly unfit: Unfit | null;
}

const UNFIT_WORDS: Readonly<Record<Unfit["reason"], string>> = {
  "no-extract": "brings no extract",
  "no-alpha": "has no alpha acids",
  "colour-out-of-reach": "makes another colour of beer",
  "strength-out-of-reach": "does not reach the strength",
  "bitterness-out-of-reach": "does not reach the bitterness",
  "breaks-a-limit": "breaks a limit of the kettle",
};

const DISTANCE_DIGITS = 2;

/** Less than this prints as nothing. */
const LEAST_TOLD = 0.005;

/** What there is instead of a row, the least unlike first. */
export function InsteadTable({ row, recipe, equipment, ambient, preferences }: InsteadTableProps) {
  const candidates = ranked(row, { recipe, equipment, ambient });
  return (
    <>
      <DataTable<Candidate>
        caption={`Instead of ${row.writtenName}`}
        columns={[
          { id: "lot", label: "Lot", cell: ({ offer }) => `${offer.lot.name}, ${offer.lot.label}` },
          { id: "far", label: "How far", isNumber: true, cell: ({ found }) => distanceText(found) },
          {
            id: "amount",
            label: "Amount",
            isNumber: true,
            cell: ({ found }) => {
              const amount = found === null ? null : amountIn(found.recipe, row.path);
              return amount === null ? "—" : amountText(amount, row.kind, preferences);
            },
          },
          {
            id: "hand",
            label: "On hand",
            isNumber: true,
            cell: ({ offer }) => amountText(offer.lot.onHand, row.kind, preferences),
          },
          { id: "why", label: "Because", cell: because },
        ]}
        records={candidates}
        keyOf={({ offer }) => offer.lot.id}
      />
      <p className="mt-2 max-w-3xl text-muted">
        0 is the row itself. It counts yield, colour, mash pH, attenuation or alpha acids, weighed by the row’s part in
        this beer; flavour and aroma are no arithmetic, and the brewer judges them.
      </p>
    </>
  );
}

function distanceText(found: Substitute | null): string {
  return found === null ? "unfit" : fixedDigits(found.distance, DISTANCE_DIGITS);
}

function because({ found, unfit }: Candidate): string {
  if (found === null) return unfit === null ? "the recipe does not brew" : UNFIT_WORDS[unfit.reason];
  const parts = Object.entries(found.unlike)
    .filter((part): part is [string, number] => typeof part[1] === "number" && part[1] >= LEAST_TOLD)
    .map(([name, value]) => `${UNLIKE_WORDS[name] ?? name} ${fixedDigits(value, DISTANCE_DIGITS)}`);
  return parts.length === 0 ? "as good as the same" : parts.join(", ");
}

const UNLIKE_WORDS: Readonly<Record<string, string>> = {
  extract: "yield",
  colour: "colour",
  beerColour: "colour of the beer",
  mashPh: "mash pH",
  attenuation: "attenuation",
  alpha: "alpha acids",
};

interface Brewable {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}

function ranked(row: RowLots, brewable: Brewable): readonly Candidate[] {
  const offers = row.others.filter(({ lot }) => lot.onHand > 0);
  const index = Number(row.path.split(".")[1]);
  const outcome = substitute({
    ...brewable,
    lacking:
      row.kind === "hop"
        ? { list: "hops", index, candidates: offers.flatMap(hopOf) }
        : { list: "fermentables", index, candidates: offers.flatMap(fermentableOf) },
  });
  const found = outcome.ok ? outcome.substitutes : [];
  const rank = (offer: Candidate): number => offer.found?.distance ?? Infinity;
  return offers
    .map((offer, i) => ({
      offer,
      found: found.find(({ candidate }) => candidate === i) ?? null,
      unfit: outcome.unfit.find(({ candidate }) => candidate === i) ?? null,
    }))
    .sort((a, b) => rank(a) - rank(b));
}

function hopOf({ figures }: LotOffer): HopStock[] {
  return figures?.kind === "hop" && figures.stock !== undefined ? [hopOfLot(figures.stock, figures)] : [];
}

function fermentableOf({ figures }: LotOffer): FermentableStock[] {
  return figures?.kind === "fermentable" && figures.stock !== undefined
    ? [fermentableOfLot(figures.stock, figures)]
    : [];
}

function amountIn({ fermentables, hops }: Recipe, path: string): number | null {
  const [list, index] = path.split(".");
  if (list === "hops") return hops[Number(index)]?.grams ?? null;
  return fermentables[Number(index)]?.kg ?? null;
}
