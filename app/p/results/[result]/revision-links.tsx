import Link from "next/link";
import { Fragment } from "react";
import type { PublishedResult } from "@/lib/model/published-result";

/** What was brewed; a revision that is published too is a link to it. */
export function RevisionLinks({ recipeTitle, revisions }: Pick<PublishedResult, "recipeTitle" | "revisions">) {
  return (
    <>
      “{recipeTitle}”,{" "}
      {revisions.map(({ rev, address }, i) => (
        <Fragment key={rev}>
          {i === 0 ? "" : " and "}
          {address === null ? `revision ${rev}` : <Link href={`/p/${address}`}>revision {rev}</Link>}
        </Fragment>
      ))}
    </>
  );
}
