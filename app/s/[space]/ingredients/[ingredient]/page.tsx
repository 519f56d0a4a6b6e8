import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { findGeneric } from "@/lib/model/generic-ingredients";
import { nameKey } from "@/lib/model/lot";
import { dayOf } from "@/lib/model/lot-today";
import { roleMay } from "@/lib/model/roles";
import { findIngredient } from "@/lib/server/ingredients/reads";
import { findUses } from "@/lib/server/ingredients/uses";
import { listLots } from "@/lib/server/lots/reads";
import { requireMember } from "@/lib/server/session";
import { FigureTable } from "@/lib/ui/ingredient/figure-table";
import { genericFacts } from "@/lib/ui/ingredient/generic-facts";
import { ingredientFigures } from "@/lib/ui/ingredient/ingredient-figures";
import { KIND_WORDS, SOURCE_WORDS } from "@/lib/ui/ingredient/kind-words";
import { LotTable } from "../lot-table";
import { UseLists } from "../use-lists";
import { OwnIngredient } from "./own-ingredient";

interface IngredientPageProps {
  readonly params: Promise<{ readonly space: string; readonly ingredient: string }>;
}

const read = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  const generic = findGeneric(id);
  const own = generic === null ? await findIngredient(member, id) : null;
  return { member, generic, own, found: generic ?? own ?? notFound() };
});

export async function generateMetadata({ params }: IngredientPageProps): Promise<Metadata> {
  const { space, ingredient } = await params;
  return { title: (await read(space, ingredient)).found.name };
}

export default async function IngredientPage({ params }: IngredientPageProps) {
  const { space, ingredient: id } = await params;
  const { member, generic, own, found } = await read(space, id);
  const { name, what } = found;
  const [lots, use] = await Promise.all([listLots(member), findUses(member, name, what)]);
  const ofThis = lots.filter((lot) => lot.what.kind === what.kind && nameKey(lot.name) === nameKey(name));
  const figures = [...ingredientFigures(what), ...(generic === null ? [] : genericFacts(generic))];
  const home = `/s/${member.spaceSlug}/ingredients`;
  const { preferences } = member;
  return (
    <>
      <p className="no-print">
        <Link href={home} className="target">
          Ingredients
        </Link>
      </p>
      <h1>{name}</h1>
      <p className="mb-4 text-muted">
        {KIND_WORDS[what.kind].one}, {generic === null ? `an ingredient of the club` : generic.group}.{" "}
        {generic === null ? null : SOURCE_WORDS[generic.source].long}
      </p>
      <FigureTable caption="Figures" figures={figures} preferences={preferences} />
      <h2 className="mt-8 mb-2">Lots</h2>
      {ofThis.length === 0 ? (
        <p className="text-muted">Nobody has a lot of it.</p>
      ) : (
        <LotTable {...{ home, lots: ofThis, preferences }} today={dayOf(new Date())} />
      )}
      {roleMay(member.role, "brew") ? (
        <p className="no-print mt-2">
          <Link href={`${home}/lots/new?kind=${what.kind}&name=${encodeURIComponent(name)}`} className="target">
            Add a lot of it
          </Link>
        </p>
      ) : null}
      <h2 className="mt-8 mb-2">Where it is used</h2>
      <UseLists space={member.spaceSlug} use={use} />
      {own === null ? null : <OwnIngredient space={member.spaceSlug} ingredient={own} preferences={preferences} />}
    </>
  );
}
