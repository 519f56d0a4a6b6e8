import type { Preferences } from "@/lib/model/preferences";
import { FERMENTABLE_FIELDS, HOP_FIELDS } from "@/lib/model/recipe-fields";
import type { Column, RowList } from "./draft";
import { EMPTY, stored, word, type Entry } from "./entry";
import { named, type Reference } from "./use-reference";

type Entries = Readonly<Partial<Record<Column, Entry>>>;

/** The figures that come with a name from the lists; null where the lists do not know it. */
export function fillFromName(a: {
  readonly list: RowList;
  readonly name: string;
  readonly reference: Reference;
  readonly preferences: Preferences;
}): Entries | null {
  const { list, name, reference, preferences } = a;
  if (list === "mashGrist" || list === "kettleGrist") return fermentable(name, reference, preferences);
  if (list === "boilHops" || list === "standHops") return hop(name, reference, preferences);
  return null;
}

function fermentable(name: string, { fermentables }: Reference, preferences: Preferences): Entries | null {
  const known = named(fermentables, name);
  if (known === null) return null;
  const of = (column: keyof typeof FERMENTABLE_FIELDS, value: number | null): Entry =>
    value === null ? EMPTY : stored({ field: FERMENTABLE_FIELDS[column], value, preferences });
  return {
    kind: word(known.kind),
    extract: of("extract", known.extract),
    moisture: of("moisture", known.moisture),
    colour: of("colour", known.colour),
    fermentability: of("fermentability", known.fermentability),
    distilledWaterPh: of("distilledWaterPh", known.acidity?.distilledWaterPh ?? null),
    buffering: of("buffering", known.acidity?.buffering ?? null),
    lacticFraction: of("lacticFraction", known.acidity?.lacticFraction ?? null),
  };
}

/** The middle of a variety's range, until the packet says better. */
function hop(name: string, { hops }: Reference, preferences: Preferences): Entries | null {
  const known = named(hops, name);
  if (known === null) return null;
  const alpha = (known.alphaLow + known.alphaHigh) / 2;
  return { alpha: stored({ field: HOP_FIELDS.alpha, value: alpha, preferences }) };
}
