import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { FEWEST_BREWERS, measuredBrews } from "@/lib/model/result-of-brews";
import { roleMay } from "@/lib/model/roles";
import { listResults } from "@/lib/server/publications/result-reads";
import { Notice } from "@/lib/ui/notice";
import { readSharedBrew } from "../read-shared-brew";
import { publishResultAction, withdrawResultAction } from "./actions";
import { PublishResultForm } from "./publish-result-form";
import { ResultList } from "./result-list";
import { WhoIsShown } from "./who-is-shown";

interface PublishPageProps {
  readonly params: Promise<{ readonly space: string; readonly sharedBrew: string }>;
}

export async function generateMetadata({ params }: PublishPageProps): Promise<Metadata> {
  const { space, sharedBrew: id } = await params;
  return { title: `Publish the result of ${(await readSharedBrew(space, id)).shared.title}` };
}

export default async function PublishResultPage({ params }: PublishPageProps) {
  const { space, sharedBrew: id } = await params;
  const { member, shared } = await readSharedBrew(space, id);
  if (!roleMay(member.role, "organise")) notFound();
  const results = await listResults(member, id);
  const { shown, brewers } = measuredBrews(shared.brews);
  return (
    <div className="max-w-2xl">
      <h1 className="mb-2">Publish the result of “{shared.title}”</h1>
      <p className="mb-4">
        <Link href={`/s/${space}/shared-brews/${id}`}>Back to the shared brew</Link>
      </p>
      <WhoIsShown clubName={member.spaceName} brews={shared.brews} shown={shown.map(({ brew }) => brew)} />
      {brewers < FEWEST_BREWERS ? (
        <Notice>
          A result needs figures that at least {FEWEST_BREWERS} brewers measured: one alone would be known. Here it is{" "}
          {brewers}.
        </Notice>
      ) : (
        <PublishResultForm
          id={randomUUID()}
          sharedBrewId={id}
          action={publishResultAction.bind(null, member.spaceSlug)}
        />
      )}
      <ResultList results={results} withdraw={withdrawResultAction.bind(null, member.spaceSlug, id)} />
    </div>
  );
}
