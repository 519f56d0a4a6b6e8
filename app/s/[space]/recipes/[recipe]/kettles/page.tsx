import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { roleMay } from "@/lib/model/roles";
import { listEquipment } from "@/lib/server/equipment/reads";
import { findRecipe, findRevision } from "@/lib/server/recipes/reads";
import { requireMember } from "@/lib/server/session";
import { EmptyState } from "@/lib/ui/empty-state";
import { Notice } from "@/lib/ui/notice";
import { KettleFilter } from "./kettle-filter";
import { kettleRows } from "./kettle-rows";
import { KettleTable } from "./kettle-table";
import { readView, type Query } from "./kettle-view";

interface KettlesPageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string }>;
  readonly searchParams: Promise<Query>;
}

const read = cache(async (space: string, id: string, rev: number | null) => {
  const member = await requireMember(space);
  const found = rev === null ? await findRecipe(member, id) : await findRevision(member, id, rev);
  return { member, revision: found ?? notFound() };
});

export async function generateMetadata({ params, searchParams }: KettlesPageProps): Promise<Metadata> {
  const { space, recipe: id } = await params;
  const { revision } = await read(space, id, readView(await searchParams).rev);
  return { title: `${revision.title} on every kettle` };
}

export default async function KettlesPage({ params, searchParams }: KettlesPageProps) {
  const { space, recipe: id } = await params;
  const view = readView(await searchParams);
  const { member, revision } = await read(space, id, view.rev);
  const { title, rev, content } = revision;
  const kettles = await listEquipment(member);
  const home = `/s/${member.spaceSlug}/recipes/${id}`;
  const written = recipeIntention(content);
  const rows = written === null ? [] : kettleRows({ content, written, kettles, view });
  return (
    <>
      <h1>{title} on every kettle</h1>
      <p className="mb-4 max-w-3xl">
        <Link href={`${home}/revisions/${rev}`}>Revision {rev}</Link>, written for {content.writtenOn.name}: strength,
        bitterness and colour stay as they are there, and the amounts are solved anew for each kettle.
      </p>
      {kettles.length === 0 ? (
        <EmptyState action={roleMay(member.role, "keep equipment") ? <NewKettle slug={member.spaceSlug} /> : undefined}>
          There is no kettle here yet. Each member describes their own, and this table has a row for it.
        </EmptyState>
      ) : (
        <KettleFilter view={view} brewers={brewersOf(kettles)} />
      )}
      {written === null ? (
        <Notice kind="attention">
          This revision does not brew on the kettle that it was written for, so there is nothing to adapt.
        </Notice>
      ) : null}
      {rows.length === 0 ? null : <KettleTable home={home} rows={rows} view={view} preferences={member.preferences} />}
      {rows.length === 0 && kettles.length > 0 && written !== null ? <p>No kettle is left by this choice.</p> : null}
    </>
  );
}

function NewKettle({ slug }: { readonly slug: string }) {
  return (
    <Link href={`/s/${slug}/equipment/new`} className="button">
      Describe a kettle
    </Link>
  );
}

function brewersOf(kettles: readonly { readonly ownerId: string; readonly ownerName: string }[]) {
  const names = new Map(kettles.map(({ ownerId, ownerName }) => [ownerId, ownerName]));
  return [...names].map(([id, name]) => ({ id, name })).sort((a, b) => a.name.localeCompare(b.name, "en"));
}
