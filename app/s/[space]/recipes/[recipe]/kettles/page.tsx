import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { requireMember } from "@/lib/server/session";
import { findRecipe, findRevision } from "@/lib/server/recipes/reads";
import { roleMay } from "@/lib/model/roles";
import { readView, type Query } from "@/lib/ui/kettles/kettle-view";
import { EmptyState } from "@/lib/ui/empty-state";
import { Notice } from "@/lib/ui/notice";
import { KettlesScreen } from "./kettles-screen";
import { readTable } from "./read-table";

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
  const first = await readTable(member, revision, view);
  const home = `/s/${member.spaceSlug}/recipes/${id}`;
  return (
    <div className="kettles">
      <h1>{title} on every kettle</h1>
      <p className="mb-4 max-w-3xl">
        <Link href={`${home}/revisions/${rev}`}>Revision {rev}</Link>, written for {content.writtenOn.name}: strength,
        bitterness and colour stay as they are there, and the amounts are solved anew for each kettle.
      </p>
      {first === null ? (
        <Notice kind="attention">
          This revision does not brew on the kettle that it was written for, so there is nothing to adapt.
        </Notice>
      ) : first.kettleCount === 0 ? (
        <EmptyState action={roleMay(member.role, "keep equipment") ? <NewKettle slug={member.spaceSlug} /> : undefined}>
          There is no kettle here yet. Each member describes their own, and this table has a row for it.
        </EmptyState>
      ) : (
        <KettlesScreen
          key={rev}
          first={first}
          revision={{ id, rev, title }}
          spaceSlug={member.spaceSlug}
          preferences={member.preferences}
        />
      )}
    </div>
  );
}

function NewKettle({ slug }: { readonly slug: string }) {
  return (
    <Link href={`/s/${slug}/equipment/new`} className="button">
      Describe a kettle
    </Link>
  );
}
