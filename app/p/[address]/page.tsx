import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { findPublished } from "@/lib/server/publications/reads";
import { optionalViewer } from "@/lib/server/session";
import { listWritableSpaces } from "@/lib/server/spaces/writable";
import { CopyForm } from "@/lib/ui/copy-form";
import { Day } from "@/lib/ui/day";
import { Notice } from "@/lib/ui/notice";
import { PageMain } from "@/lib/ui/page-main";
import { writtenKettle } from "@/lib/ui/recipe/kettle-choices";
import { RecipeLedger } from "@/lib/ui/recipe/recipe-ledger";
import { publicMetadata } from "../public-metadata";
import { copyPublishedAction } from "./actions";
import { previewText } from "./preview-text";

interface PublishedPageProps {
  readonly params: Promise<{ readonly address: string }>;
}

const read = cache(async (address: string) => (await findPublished(address)) ?? notFound());

export async function generateMetadata({ params }: PublishedPageProps): Promise<Metadata> {
  const published = await read((await params).address);
  return publicMetadata({
    title: published.title,
    description: previewText(published),
    url: `/p/${published.address}`,
  });
}

export default async function PublishedPage({ params }: PublishedPageProps) {
  const published = await read((await params).address);
  const { title, rev, authorName, credits, content, publishedAt, newerAddress, address } = published;
  const viewer = await optionalViewer();
  return (
    <PageMain>
      <h1 className="mb-2">{title}</h1>
      <p className="mb-2">
        Revision {rev}, by {authorName}, published <Day at={publishedAt} />
        {credits.map((credit) => `, after “${credit.title}”`).join("")}. It never changes.
      </p>
      {newerAddress === null ? null : (
        <Notice>
          There is a newer revision: <Link href={`/p/${newerAddress}`}>read it</Link>.
        </Notice>
      )}
      <RecipeLedger
        title={title}
        content={content}
        kettles={[writtenKettle(content)]}
        preferences={viewer?.preferences ?? DEFAULT_PREFERENCES}
        saving={null}
      />
      <section aria-labelledby="copy" className="no-print mt-10 max-w-xl">
        <h2 id="copy" className="mb-3">
          Copy it into my club
        </h2>
        {viewer === null ? (
          <p>
            <Link href={`/sign-in?next=${encodeURIComponent(`/p/${address}`)}`}>Sign in</Link> to copy this recipe into
            your club or onto your own bench, and to have it computed for your kettle.
          </p>
        ) : (
          <CopyForm
            fixed={{ id: randomUUID(), address }}
            targets={await listWritableSpaces(viewer)}
            title={title}
            action={copyPublishedAction}
          />
        )}
      </section>
    </PageMain>
  );
}
