import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { SearchHit } from "@/lib/model/search";
import { Quantity } from "@/lib/ui/quantity";

interface Figure {
  readonly label: string;
  readonly value: number | null;
  readonly dimension: Dimension;
}

/** The figures by which a beer is found. They were computed with the recipe, and its own page explains each of them. */
export function HitFigures({ hit, preferences }: { readonly hit: SearchHit; readonly preferences: Preferences }) {
  const figures: readonly Figure[] = [
    { label: "Original", value: hit.originalPlato, dimension: "extract" },
    { label: "Alcohol", value: hit.alcoholVol, dimension: "alcohol" },
    { label: "Bitterness", value: hit.bitternessIbu, dimension: "bitterness" },
    { label: "Colour", value: hit.colourEbc, dimension: "colour" },
  ];
  const known = figures.filter(({ value }) => value !== null);
  if (known.length === 0) return null;
  return (
    <dl className="flex flex-wrap gap-x-5">
      {known.map(({ label, value, dimension }) => (
        <div key={label} className="flex gap-x-1">
          <dt className="text-sm text-muted">{label}</dt>
          <dd>
            <Quantity value={value} dimension={dimension} preferences={preferences} />
          </dd>
        </div>
      ))}
    </dl>
  );
}
