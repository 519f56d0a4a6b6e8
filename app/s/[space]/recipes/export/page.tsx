import type { Metadata } from "next";
import Link from "next/link";
import { listRecipes } from "@/lib/server/recipes/list";
import { requireMember } from "@/lib/server/session";
import { EmptyState } from "@/lib/ui/empty-state";
import { ExportForm } from "./export-form";

export const metadata: Metadata = { title: "Export recipes" };

interface ExportPageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function ExportPage({ params }: ExportPageProps) {
  const member = await requireMember((await params).space);
  const recipes = await listRecipes(member);
  const home = `/s/${member.spaceSlug}/recipes`;
  return (
    <>
      <h1 className="mb-2">Export recipes</h1>
      <p className="mb-6 text-muted">
        Files in two open standards, with the figures of the kettle that each recipe is written for.
      </p>
      {recipes.length === 0 ? (
        <EmptyState action={<Link href={home}>Recipes</Link>}>There is no recipe here yet.</EmptyState>
      ) : (
        <ExportForm action={`${home}/export/file`} recipes={recipes.map(({ id, title }) => ({ id, title }))} />
      )}
    </>
  );
}
