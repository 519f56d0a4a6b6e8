import Link from "next/link";
import type { Preferences } from "@/lib/model/preferences";
import type { SearchHit, SearchKind } from "@/lib/model/search";
import { Day } from "@/lib/ui/day";
import { MarkedText } from "@/lib/ui/marked-text";
import { HitFigures } from "./hit-figures";

interface HitListProps {
  readonly hits: readonly SearchHit[];
  readonly preferences: Preferences;
  /** Whether the hits may be of several spaces. */
  readonly everywhere: boolean;
}

const NAMES: Readonly<Record<SearchKind, string>> = { recipe: "Recipe", brew: "Brew", ingredient: "Ingredient" };

/** What was found, the best match first. */
export function HitList({ hits, preferences, everywhere }: HitListProps) {
  return (
    <ol className="list-ruled" aria-label="Found">
      {hits.map((hit) => (
        <li key={`${hit.spaceSlug}/${hit.kind}/${hit.id}`}>
          <Link href={addressOf(hit)} className="target font-semibold">
            <span>
              <MarkedText parts={hit.title} />
            </span>
          </Link>
          <p className="text-sm text-muted">
            {NAMES[hit.kind]}
            {hit.style === null ? "" : `, style ${hit.style}`}
            {everywhere ? `, ${hit.spaceName}` : ""}, by {hit.authorName}, <Day at={hit.changedAt} />
            {hit.kind !== "ingredient" && hit.brewed ? ", brewed" : ""}
          </p>
          <HitFigures hit={hit} preferences={preferences} />
          {hit.excerpts.map((parts) => (
            <p key={parts.map(({ text }) => text).join("")} className="wrap-anywhere">
              <MarkedText parts={parts} />
            </p>
          ))}
        </li>
      ))}
    </ol>
  );
}

function addressOf({ kind, id, spaceSlug }: SearchHit): string {
  const home = `/s/${spaceSlug}`;
  if (kind === "ingredient") return `${home}/ingredients/${id}`;
  return kind === "brew" ? `${home}/brews/${id}` : `${home}/recipes/${id}`;
}
