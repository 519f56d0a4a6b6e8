import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { roleMay } from "@/lib/model/roles";
import { findRecipe } from "@/lib/server/recipes/reads";
import { requireMember } from "@/lib/server/session";
import { findSharedBrewPlan } from "@/lib/server/shared-brews/reads";
import { changePlanAction } from "./actions";
import { PlanChangeForm } from "./plan-change-form";

interface PlanPageProps {
  readonly params: Promise<{ readonly space: string; readonly sharedBrew: string }>;
}

const read = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  const shared = await findSharedBrewPlan(member, id);
  if (shared === null || !roleMay(member.role, "organise")) notFound();
  return { member, shared };
});

export async function generateMetadata({ params }: PlanPageProps): Promise<Metadata> {
  const { space, sharedBrew: id } = await params;
  return { title: `Change the plan of ${(await read(space, id)).shared.title}` };
}

export default async function PlanPage({ params }: PlanPageProps) {
  const { space, sharedBrew: id } = await params;
  const { member, shared } = await read(space, id);
  const recipe = await findRecipe(member, shared.recipeId);
  return (
    <div className="max-w-xl">
      <h1>Change the plan</h1>
      <p className="my-4 text-muted">
        <Link href={`/s/${space}/shared-brews/${id}`}>{shared.title}</Link>, version {shared.version}. A change makes
        version {shared.version + 1}; everybody who has joined is told. Brews that are planned already stay as they are.
      </p>
      <PlanChangeForm
        id={id}
        plan={shared.plan}
        headRev={recipe?.headRev ?? shared.recipeRev}
        action={changePlanAction.bind(null, space)}
      />
    </div>
  );
}
