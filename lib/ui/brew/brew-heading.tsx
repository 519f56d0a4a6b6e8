import Link from "next/link";
import type { ReactElement } from "react";
import type { BrewSummary } from "@/lib/model/brew";

/** Which batch this is, whose, on what; and the pages that it has. */
export interface BrewHeadingProps {
  readonly home: string;
  readonly brew: BrewSummary;
  readonly page: "run sheet" | "comparison" | "cellar" | "package";
}

export function BrewHeading({ home, brew, page }: BrewHeadingProps): ReactElement {
  const own = `${home}/brews/${brew.id}`;
  const pages = [
    { id: "run sheet", href: own, text: "Run sheet" },
    { id: "comparison", href: `${own}/comparison`, text: "Ledger comparison" },
    { id: "cellar", href: `${own}/cellar`, text: "Cellar" },
    { id: "package", href: `${own}/package`, text: "Package" },
  ] as const;
  return (
    <header>
      <h1>{brew.title}</h1>
      <p className="text-muted">
        {brew.brewerName} on {brew.equipmentName}, from{" "}
        <Link href={`${home}/recipes/${brew.recipeId}/revisions/${brew.recipeRev}`}>revision {brew.recipeRev}</Link> of
        the recipe
        {brew.sharedBrewId === null ? null : (
          <>
            , in a <Link href={`${home}/shared-brews/${brew.sharedBrewId}`}>shared brew</Link>
          </>
        )}
        .
      </p>
      {brew.state === "closed" ? null : (
        // A page of its own, outside of the site's navigation: it is kept on the device and starts without a network.
        <p className="no-print mt-3">
          <a className="button" href={`/brew-day${home.slice("/s".length)}/${brew.id}`}>
            Brew day
          </a>
        </p>
      )}
      <nav aria-label="This brew" className="local-nav mt-2">
        <ul className="flex flex-wrap gap-x-5">
          {pages.map(({ id, href, text }) => (
            <li key={id}>
              <Link href={href} aria-current={id === page ? "page" : undefined}>
                {text}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
    </header>
  );
}
