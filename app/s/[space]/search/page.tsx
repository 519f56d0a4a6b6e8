import type { Metadata } from "next";
import { fieldErrors } from "@/lib/model/field-errors";
import { MOST_MATCHES, SEARCH_PAGE_SIZE, searchInput, type SearchResult } from "@/lib/model/search";
import { search } from "@/lib/server/search/find";
import { requireMember } from "@/lib/server/session";
import { listPeople } from "@/lib/server/spaces/reads";
import { Notice } from "@/lib/ui/notice";
import { PageLinks } from "@/lib/ui/page-links";
import { HitList } from "./hit-list";
import { pageAddress, type SearchParams } from "./search-address";
import { SearchForm } from "./search-form";

export const metadata: Metadata = { title: "Search" };

interface SearchPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<SearchParams>;
}

export default async function SearchPage({ params, searchParams }: SearchPageProps) {
  const member = await requireMember((await params).space);
  const asked = await searchParams;
  const input = searchInput.safeParse(asked);
  const [people, result] = await Promise.all([
    listPeople(member),
    input.success ? search(member, input.data) : Promise.resolve(null),
  ]);
  const home = `/s/${member.spaceSlug}`;
  const { preferences } = member;
  const errors = input.success ? {} : fieldErrors(input.error);
  return (
    <>
      <h1 className="mb-4">Search {member.spaceName}</h1>
      <SearchForm {...{ home, people, preferences, errors }} params={asked} />
      {result === null ? (
        <Notice kind="attention">Nothing was searched: {Object.values(errors).join("; ")}.</Notice>
      ) : (
        <section aria-label="What was found">
          <p className="mb-3" role="status">
            {toldOf(result)}
          </p>
          <HitList hits={result.hits} preferences={preferences} everywhere={input.data?.where === "everywhere"} />
          <PageLinks
            label="Pages of what was found"
            page={input.data?.page ?? 1}
            pages={Math.ceil(Math.min(result.matches, MOST_MATCHES) / SEARCH_PAGE_SIZE)}
            hrefOf={(page) => pageAddress(home, asked, page)}
          />
        </section>
      )}
    </>
  );
}

function toldOf({ matches, isMore, corrected }: SearchResult): string {
  const instead = corrected === null ? "" : `These words stand nowhere; searched instead: “${corrected}”. `;
  if (matches === 0) return `${instead}Nothing is found. Fewer words or filters find more.`;
  if (isMore) return `${instead}More than ${matches} are found; the newest of them are shown, the best match first.`;
  return `${instead}${matches === 1 ? "One is" : `${matches} are`} found, the best match first.`;
}
