import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { findPublishedResult } from "@/lib/server/publications/result-reads";
import { optionalViewer } from "@/lib/server/session";
import { Day } from "@/lib/ui/day";
import { Notice } from "@/lib/ui/notice";
import { PageMain } from "@/lib/ui/page-main";
import { publicMetadata } from "../../public-metadata";
import { resultText } from "./result-text";
import { ResultTable } from "./result-table";
import { RevisionLinks } from "./revision-links";

interface ResultPageProps {
  readonly params: Promise<{ readonly result: string }>;
}

const read = cache(async (address: string) => (await findPublishedResult(address)) ?? notFound());

export async function generateMetadata({ params }: ResultPageProps): Promise<Metadata> {
  const result = await read((await params).result);
  return publicMetadata({ title: result.title, description: resultText(result), url: `/p/results/${result.address}` });
}

export default async function ResultPage({ params }: ResultPageProps) {
  const result = await read((await params).result);
  const { title, clubName, brewers, kettles, columns, accounts, publishedAt, newerAddress, revisions } = result;
  const viewer = await optionalViewer();
  const texts = new Map(revisions.length < 2 ? [] : columns.map(({ name, rev }) => [name, rev] as const));
  return (
    <PageMain>
      <h1 className="mb-2">{title}</h1>
      <p className="mb-2">
        A shared brew of {clubName}: <RevisionLinks {...result} />, brewed by {brewers} brewers on {kettles} kettles.
      </p>
      <p className="mb-2">
        The figures are those of <Day at={publishedAt} />, when they were published, and never change; what was read
        later is not in them. The brewers are in no order, and unnamed.
      </p>
      {texts.size === 0 ? null : (
        <p className="mb-2">{[...texts].map(([name, rev]) => `${name} brewed revision ${String(rev)}`).join("; ")}.</p>
      )}
      {newerAddress === null ? null : (
        <Notice>
          There is a newer result: <Link href={`/p/results/${newerAddress}`}>read it</Link>.
        </Notice>
      )}
      <section aria-labelledby="across" className="mt-8">
        <h2 id="across" className="mb-2">
          Planned against measured, across brewers
        </h2>
        <p className="mb-4 text-muted">
          Each plan was computed for the brewer’s own kettle before the brew, with its 80&nbsp;% interval. “Inside” is
          no further from it than four of five such brews and readings would be.
        </p>
        <ResultTable result={{ columns, accounts }} preferences={viewer?.preferences ?? DEFAULT_PREFERENCES} />
      </section>
    </PageMain>
  );
}
