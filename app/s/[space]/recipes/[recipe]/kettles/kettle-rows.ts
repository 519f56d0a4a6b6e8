import type { AdaptOutcome } from "@/lib/calc/adapt";
import { intervals, type Interval, type Ledger, type QuantityId } from "@/lib/calc/ledger";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { adaptTo, type VolumeHeld, type WrittenIntention } from "@/lib/model/recipe-intention";
import type { KettleView } from "./kettle-view";

/** One kettle with what the recipe becomes on it. */
export interface KettleRow {
  readonly profile: EquipmentProfile;
  readonly outcome: AdaptOutcome;
  readonly originalExtract: Interval | undefined;
}

/** The recipe on every kettle, in the order and with the filter that the address asks for. */
export function kettleRows(a: {
  readonly content: RecipeContent;
  readonly written: WrittenIntention;
  readonly kettles: readonly EquipmentProfile[];
  readonly view: KettleView;
}): readonly KettleRow[] {
  const { content, written, kettles, view } = a;
  const rows = kettles
    .filter(({ ownerId }) => view.brewer === null || ownerId === view.brewer)
    .map((profile) => rowOf(content, written, profile, view.volume))
    .filter(({ outcome }) => view.fit === "all" || outcome.ok === (view.fit === "fits"));
  const sign = view.isDescending ? -1 : 1;
  return rows.sort((one, other) => sign * compare(one, other, view));
}

function rowOf(
  content: RecipeContent,
  { intention }: WrittenIntention,
  profile: EquipmentProfile,
  volume: VolumeHeld,
): KettleRow {
  const { equipment } = profile;
  const outcome = adaptTo({ content, intention, equipment, volume });
  const { recipe } = outcome;
  const known = recipe === null ? {} : intervals({ recipe, equipment, ambient: content.writtenOn.ambient });
  return { profile, outcome, originalExtract: known["fermenter.originalExtract"] };
}

export function hopGrams({ outcome }: KettleRow): number | null {
  return outcome.recipe === null ? null : outcome.recipe.hops.reduce((sum, hop) => sum + hop.grams, 0);
}

export function quantityOf({ outcome }: KettleRow, id: QuantityId): number | null {
  const ledger: Ledger | null = outcome.ledger;
  return ledger === null ? null : ledger.quantities[id];
}

function compare(one: KettleRow, other: KettleRow, { sort }: KettleView): number {
  if (sort === "kettle") return one.profile.equipment.name.localeCompare(other.profile.equipment.name, "en");
  if (sort === "brewer") return one.profile.ownerName.localeCompare(other.profile.ownerName, "en");
  if (sort === "fit") return Number(other.outcome.ok) - Number(one.outcome.ok);
  const value = (row: KettleRow): number => (sort === "hops" ? hopGrams(row) : quantityOf(row, sort)) ?? Infinity;
  const [a, b] = [value(one), value(other)];
  return a === b ? 0 : a - b;
}
