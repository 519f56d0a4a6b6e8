import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { roleMay } from "@/lib/model/roles";
import { listIngredients } from "@/lib/server/ingredients/reads";
import { requireMember } from "@/lib/server/session";
import { readView, type Query } from "../../ingredient-view";
import { KindChoice } from "../../kind-choice";
import { createLotAction } from "../actions";
import { knownNames } from "../known-names";
import { NewLotForm } from "./new-lot-form";

export const metadata: Metadata = { title: "New lot" };

interface NewLotPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<Query>;
}

export default async function NewLotPage({ params, searchParams }: NewLotPageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "brew")) notFound();
  const query = await searchParams;
  const kind = readView(query).kind ?? "hop";
  const { name } = query;
  return (
    <div className="max-w-2xl">
      <h1>New lot</h1>
      <p className="my-4 text-muted">
        One harvest, one sack, one packet. What its label says replaces the usual figures on a sheet that is solved with
        it; what it does not say may stay empty.
      </p>
      <KindChoice kind={kind} path={`/s/${member.spaceSlug}/ingredients/lots/new`} />
      <NewLotForm
        key={kind}
        kind={kind}
        name={typeof name === "string" ? name.slice(0, 80) : ""}
        names={knownNames(kind, await listIngredients(member))}
        preferences={member.preferences}
        action={createLotAction.bind(null, member.spaceSlug, kind)}
      />
    </div>
  );
}
