import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { NumberField } from "@/lib/ui/number-field";
import { typedIn, type SearchParams } from "./search-address";

interface FigureFiltersProps {
  readonly params: SearchParams;
  readonly errors: FieldErrors;
  readonly preferences: Preferences;
}

interface Figure {
  readonly label: string;
  readonly unit: string;
  /** Begins the names of the two fields, and says the unit in the address. */
  readonly stem: string;
  /** The same figure in the other unit, which somebody else's link may have. */
  readonly other?: string;
}

/** From and to of each figure, in the reader's units. */
export function FigureFilters({ params, errors, preferences }: FigureFiltersProps) {
  return figuresFor(preferences).map(({ label, unit, stem, other }) => {
    // A bound in another unit stays what it is; it is shown in its own field instead of the reader's.
    const inOther = other !== undefined && ["From", "To"].some((end) => typedIn(params, other + end) !== "");
    const name = inOther ? other : stem;
    const shownUnit = inOther ? (UNIT_OF[other] ?? unit) : unit;
    return (
      <fieldset key={stem} className="grid grid-cols-2 items-start gap-2">
        <legend className="sr-only">{label}</legend>
        {["From", "To"].map((end) => (
          <NumberField
            key={end}
            name={name + end}
            label={`${label} ${end.toLowerCase()}`}
            unit={shownUnit}
            defaultValue={typedIn(params, name + end)}
            error={errors[name + end]}
          />
        ))}
      </fieldset>
    );
  });
}

const UNIT_OF: Readonly<Record<string, string>> = { sg: "SG", p: "°P", ebc: "EBC", srm: "SRM" };

function figuresFor({ gravity, colour }: Preferences): readonly Figure[] {
  return [
    gravity === "plato"
      ? { label: "Original extract", unit: "°P", stem: "p", other: "sg" }
      : { label: "Original gravity", unit: "SG", stem: "sg", other: "p" },
    { label: "Alcohol", unit: "% vol", stem: "vol" },
    { label: "Bitterness", unit: "IBU", stem: "ibu" },
    colour === "srm"
      ? { label: "Colour", unit: "SRM", stem: "srm", other: "ebc" }
      : { label: "Colour", unit: "EBC", stem: "ebc", other: "srm" },
  ];
}
