import Link from "next/link";
import { adaptWith, NO_CHOICE, type Adaptation } from "@/lib/model/adaptation";
import type { LotFigures } from "@/lib/model/lot";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { Preferences } from "@/lib/model/preferences";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { rowsWithLots, type LotOffer, type RowLots } from "@/lib/model/row-lots";
import type { Recipe } from "@/lib/calc/ledger";
import { listAdaptations } from "@/lib/server/adaptations/reads";
import { listOffers } from "@/lib/server/lots/offers";
import type { Member } from "@/lib/server/session";
import { amountText } from "@/lib/ui/ingredient/amount-text";
import { InsteadTable } from "./instead-table";
import { chooseLotsAction } from "./lots-action";
import { LotsForm, type LotRow } from "./lots-form";
import { LotsTable } from "./lots-table";
import type { Sheet } from "./read-sheet";

interface LotsSectionProps {
  readonly member: Member;
  readonly sheet: Sheet;
  /** The query of the page; "instead" in it asks for the substitutes of a row. */
  readonly asked: string;
}

/** What is on the brewer's shelf for each row of the sheet, and what it changes. */
export async function LotsSection({ member, sheet, asked }: LotsSectionProps) {
  const { revision, profile, choice } = sheet;
  const recipe = sheet.chosen?.recipe ?? sheet.outcome.recipe;
  if (recipe === null) return null;
  const { preferences, spaceSlug } = member;
  const [offers, adaptations] = await Promise.all([
    listOffers(member, profile.ownerId),
    listAdaptations(member, { recipeId: revision.id, rev: revision.rev }),
  ]);
  const rows = rowsOf(sheet, recipe, offers);
  const taken = rows.filter(({ chosen }) => chosen !== null);
  const lacking = rows.filter(isLacking);
  const instead = lacking.find(({ path }) => path === new URLSearchParams(asked).get("instead"));
  return (
    <section aria-labelledby="lots" className="mt-8">
      <h2 id="lots" className="mb-2">
        From the shelf
      </h2>
      {offers.length === 0 ? (
        <p className="text-muted">
          {profile.ownerName} and the club have no lots. <Link href={`/s/${spaceSlug}/ingredients`}>Ingredients</Link>
        </p>
      ) : null}
      {taken.length === 0 ? null : <LotsTable space={spaceSlug} rows={taken} preferences={preferences} />}
      {profile.mayWrite && offers.length > 0 ? (
        <details className="no-print" open={taken.length === 0}>
          <summary className="cursor-pointer py-2">Choose lots</summary>
          <LotsForm
            rows={rows.map((row) => formRow(row, preferences)).filter(({ choices }) => choices.length > 0)}
            kept={keptFields(revision, profile, adaptations.get(profile.id) ?? null)}
            action={chooseLotsAction.bind(null, spaceSlug)}
          />
        </details>
      ) : null}
      {lacking.length === 0 || offers.length === 0 ? null : <Lacking rows={lacking} asked={asked} />}
      {instead === undefined ? null : (
        <InsteadTable
          row={instead}
          recipe={recipe}
          equipment={profile.equipment}
          ambient={revision.content.writtenOn.ambient}
          preferences={preferences}
        />
      )}
      {choice.way === null ? null : <p className="text-muted">The way out is solved with these lots too.</p>}
    </section>
  );
}

function rowsOf({ revision, profile, choice, chosen, outcome }: Sheet, recipe: Recipe, offers: readonly LotOffer[]) {
  const { content } = revision;
  const written = recipeIntention(content);
  const isByLots = Object.keys(choice.lots).length > 0;
  const plain = {
    content,
    equipment: profile.equipment,
    choice: { ...choice, lots: {} },
    lots: new Map<string, LotFigures>(),
  };
  const byRecipe = !isByLots || written === null ? null : adaptWith({ ...plain, written });
  const generic = isByLots ? (byRecipe?.chosen?.recipe ?? byRecipe?.outcome.recipe ?? null) : recipe;
  const ledger = chosen?.ledger ?? outcome.ledger;
  const cells = ledger?.quantities["fermenter.cells"] ?? null;
  return rowsWithLots({ written: content.recipe, recipe, generic, choice: choice.lots, offers, cells });
}

/** No lot was chosen, none of the ingredient is there, and something else of its kind is. */
function isLacking({ chosen, matching, others }: RowLots): boolean {
  return chosen === null && !matching.some(({ lot }) => lot.onHand > 0) && others.some(({ lot }) => lot.onHand > 0);
}

function Lacking({ rows, asked }: { readonly rows: readonly RowLots[]; readonly asked: string }) {
  const present = new URLSearchParams(asked).get("instead");
  const hrefOf = (path: string): string => {
    const next = new URLSearchParams(asked);
    next.set("instead", path);
    return `?${next.toString()}`;
  };
  return (
    <nav aria-label="What I have instead" className="no-print local-nav mt-3">
      <p>Not on the shelf; what there is instead of</p>
      <ul className="flex flex-wrap gap-x-5">
        {rows.map(({ path, writtenName }) => (
          <li key={path}>
            <Link href={hrefOf(path)} aria-current={path === present ? "true" : undefined} scroll={false}>
              {writtenName}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function formRow(row: RowLots, preferences: Preferences): LotRow {
  const { path, writtenName, kind, amount, chosen, matching, others } = row;
  const choice = ({ lot }: LotOffer, isOther: boolean) => {
    const whose = lot.owner === null ? "the club’s" : `${lot.owner.name}’s`;
    const what = isOther ? `instead: ${lot.name}, ${lot.label}` : lot.label;
    return { value: lot.id, text: `${what}, ${whose}, ${amountText(lot.onHand, kind, preferences)}` };
  };
  return {
    path,
    label: `${writtenName}, ${amountText(amount, kind, preferences)}`,
    chosen: chosen?.lot.id ?? "",
    choices: [...matching.map((offer) => choice(offer, false)), ...others.map((offer) => choice(offer, true))],
  };
}

function keptFields({ id, rev }: RecipeRevision, profile: EquipmentProfile, kept: Adaptation | null) {
  const { volume, way } = kept?.choice ?? NO_CHOICE;
  const lockVersion = kept?.lockVersion ?? 0;
  return { recipeId: id, rev, equipmentId: profile.id, lockVersion, volume, way: way ?? "" };
}
