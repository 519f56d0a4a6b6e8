import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { requireMember } from "@/lib/server/session";
import { createIngredientAction } from "../actions";
import { readView, type Query } from "../ingredient-view";
import { KindChoice } from "../kind-choice";
import { NewIngredientForm } from "./new-ingredient-form";

export const metadata: Metadata = { title: "New ingredient" };

interface NewIngredientPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<Query>;
}

export default async function NewIngredientPage({ params, searchParams }: NewIngredientPageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "write recipes")) notFound();
  const kind = readView(await searchParams).kind ?? "fermentable";
  const home = `/s/${member.spaceSlug}/ingredients`;
  return (
    <div className="max-w-2xl">
      <h1>New ingredient</h1>
      <p className="my-4 text-muted">
        For what the generic list does not have. Recipes offer it by its name, with these figures.
      </p>
      <KindChoice kind={kind} path={`${home}/new`} />
      <NewIngredientForm
        key={kind}
        kind={kind}
        preferences={member.preferences}
        action={createIngredientAction.bind(null, member.spaceSlug, kind)}
      />
    </div>
  );
}
