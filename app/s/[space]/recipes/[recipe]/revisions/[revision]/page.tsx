import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { listEquipment } from "@/lib/server/equipment/reads";
import { findRevision } from "@/lib/server/recipes/reads";
import { revisionIntervals } from "@/lib/server/recipes/revision-intervals";
import { requireMember } from "@/lib/server/session";
import { Day } from "@/lib/ui/day";
import { kettleChoices, writtenKettle } from "@/lib/ui/recipe/kettle-choices";
import { RecipeLedger } from "@/lib/ui/recipe/recipe-ledger";
import { PaperSheet } from "@/lib/ui/sheet/paper-sheet";
import { writtenSheet } from "@/lib/ui/sheet/written-sheet";
import { ExportLinks } from "../../../export-links";

interface RevisionPageProps {
  readonly params: Promise<{ readonly space: string; readonly recipe: string; readonly revision: string }>;
}

const read = cache(async (space: string, id: string, rev: string) => {
  const member = await requireMember(space);
  return { member, found: (await findRevision(member, id, Number(rev))) ?? notFound() };
});

export async function generateMetadata({ params }: RevisionPageProps): Promise<Metadata> {
  const { space, recipe: id, revision } = await params;
  const { title, rev } = (await read(space, id, revision)).found;
  return { title: `${title}, revision ${rev}` };
}

export default async function RevisionPage({ params }: RevisionPageProps) {
  const { space, recipe: id, revision } = await params;
  const { member, found } = await read(space, id, revision);
  const kettles = await listEquipment(member);
  const home = `/s/${member.spaceSlug}/recipes/${id}`;
  const { title, rev, headRev, content, message, authorName, createdAt } = found;
  return (
    <>
      <h1>{title}</h1>
      <p className="mb-4">
        Revision {rev} of {headRev}, by {authorName}, <Day at={createdAt} />
        {message === "" ? "" : `: “${message}”`}. It never changes.{" "}
        <span className="no-print">
          <Link href={home}>{rev === headRev ? "Write on" : "Newest revision"}</Link> ·{" "}
          <Link href={`${home}/kettles?rev=${rev}`}>On every kettle</Link>
        </span>
      </p>
      <PaperSheet sheet={writtenSheet(found, member.preferences)}>
        <RecipeLedger
          title={title}
          content={content}
          kettles={[writtenKettle(content), ...kettleChoices(kettles, member.userId)]}
          preferences={member.preferences}
          ranges={revisionIntervals(member, found)}
          saving={null}
        />
        <ExportLinks recipes={`/s/${member.spaceSlug}/recipes`} id={id} rev={rev} />
      </PaperSheet>
    </>
  );
}
