import type { Metadata } from "next";
import Link from "next/link";
import { listExportReports } from "@/lib/server/exchange/export-reports";
import { listRecipes } from "@/lib/server/recipes/list";
import { requireMember } from "@/lib/server/session";
import { EmptyState } from "@/lib/ui/empty-state";
import { ExportForm } from "./export-form";
import { readRefused } from "./read-refused";

export const metadata: Metadata = { title: "Export recipes" };

interface ExportPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export default async function ExportPage({ params, searchParams }: ExportPageProps) {
  const member = await requireMember((await params).space);
  const [recipes, reports] = await Promise.all([listRecipes(member), listExportReports(member)]);
  const home = `/s/${member.spaceSlug}/recipes`;
  const refused = readRefused(await searchParams, new Set(recipes.map(({ id }) => id)));
  return (
    <>
      <h1 className="mb-2">Export recipes</h1>
      <p className="mb-6 text-muted">
        Files in two open standards, with the figures of the kettle that each recipe is written for.
      </p>
      {recipes.length === 0 ? (
        <EmptyState action={<Link href={home}>Recipes</Link>}>There is no recipe here yet.</EmptyState>
      ) : (
        <ExportForm
          action={`${home}/export/file`}
          recipes={recipes.map(({ id, title }) => ({ id, title, report: reports.get(id) ?? null }))}
          refused={refused}
        />
      )}
    </>
  );
}
