import "server-only";
import {
  MOST_MATCHES,
  SEARCH_KINDS,
  SEARCH_PAGE_SIZE,
  type SearchHit,
  type SearchInput,
  type SearchResult,
} from "@/lib/model/search";
import { displayNames } from "../accounts/names";
import { inSpace, type SpaceTransaction } from "../db";
import { proveEveryMembership } from "../proof";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { askedWords, correctedWords } from "./asked-words";
import { hasMatch, markedParts } from "./marked";

interface Row {
  readonly kind: string;
  readonly id: string;
  readonly titleMarked: string;
  readonly keywordsMarked: string;
  readonly bodyMarked: string;
  readonly style: string | null;
  readonly authorId: string;
  readonly brewed: boolean;
  readonly changedAt: Date;
  readonly originalPlato: number | null;
  readonly bitternessIbu: number | null;
  readonly colourEbc: number | null;
  readonly alcoholVol: number | null;
  readonly weight: number;
  readonly matches: number;
}

interface Found {
  readonly member: Member;
  readonly rows: readonly Row[];
  readonly matches: number;
  readonly corrected: string | null;
}

interface Page {
  readonly size: number;
  readonly skipped: number;
}

/** Looks through one space, or through every space of the member. */
export async function search(member: Member, input: SearchInput): Promise<SearchResult> {
  const page = input.page ?? 1;
  const skipped = (page - 1) * SEARCH_PAGE_SIZE;
  if (input.where !== "everywhere") {
    return toResult([await searchIn(member, input, { size: SEARCH_PAGE_SIZE, skipped })]);
  }
  // Each space gives its best, and the best of them all are on the page.
  const spaces = await proveEveryMembership(member);
  const wide = { size: skipped + SEARCH_PAGE_SIZE, skipped: 0 };
  const found = await Promise.all(spaces.map((space) => searchIn(space, input, wide)));
  // A word that one space knows is not mistyped.
  const exact = found.filter(({ corrected, rows }) => corrected === null && rows.length > 0);
  return toResult(exact.length > 0 ? exact : found, { size: SEARCH_PAGE_SIZE, skipped });
}

/** The words as they were typed; where they stand nowhere, as they were probably meant. */
function searchIn(member: Member, input: SearchInput, page: Page): Promise<Found> {
  return inSpace(member.spaceId, member.userId, async (tx) => {
    const asked = input.q === null ? null : await askedWords(tx, input.q);
    const rows = asked === "" ? [] : await findRows(tx, asked, input, page);
    const found = { member, rows, matches: rows[0]?.matches ?? 0, corrected: null };
    if (rows.length > 0 || input.q === null || page.skipped > 0) return found;
    const corrected = await correctedWords(tx, input.q);
    if (corrected === null) return found;
    const meant = await findRows(tx, await askedWords(tx, corrected), input, page);
    return meant.length === 0 ? found : { member, rows: meant, matches: meant[0]?.matches ?? 0, corrected };
  });
}

function findRows(
  tx: SpaceTransaction,
  asked: string | null,
  input: SearchInput,
  { size, skipped }: Page,
): Promise<readonly Row[]> {
  return tx.$queryRaw<readonly Row[]>`
    SELECT kind, id, title_marked AS "titleMarked", keywords_marked AS "keywordsMarked", body_marked AS "bodyMarked",
           style, author_id AS "authorId", brewed, changed_at AS "changedAt",
           original_plato AS "originalPlato", bitterness_ibu AS "bitternessIbu", colour_ebc AS "colourEbc",
           alcohol_vol AS "alcoholVol", weight, matches
    FROM find_documents(${asked}::tsquery, ${JSON.stringify(wantedOf(input))}::jsonb, ${MOST_MATCHES + 1}::int,
                        ${size}::int, ${skipped}::int)`;
}

/** The filters as the function of the database takes them; those that nobody set are left out. */
function wantedOf(input: SearchInput): Readonly<Record<string, string | number | boolean>> {
  const wanted = {
    kind: input.kind,
    style: input.style,
    author: input.author,
    brewed: input.brewed === null ? null : input.brewed === "yes",
    platoFrom: input.pFrom ?? input.sgFrom,
    platoTo: input.pTo ?? input.sgTo,
    volFrom: input.volFrom,
    volTo: input.volTo,
    ibuFrom: input.ibuFrom,
    ibuTo: input.ibuTo,
    ebcFrom: input.ebcFrom ?? input.srmFrom,
    ebcTo: input.ebcTo ?? input.srmTo,
    since: input.since?.toISOString() ?? null,
    // The day is counted in.
    until: input.until === null ? null : new Date(input.until.getTime() + 86_400_000).toISOString(),
  };
  return Object.fromEntries(Object.entries(wanted).flatMap(([name, value]) => (value === null ? [] : [[name, value]])));
}

async function toResult(found: readonly Found[], page?: Page): Promise<SearchResult> {
  const all = found.flatMap(({ member, rows }) => rows.map((row) => ({ member, row })));
  const merged = page === undefined ? all : all.sort(bestFirst).slice(page.skipped, page.skipped + page.size);
  const names = await Promise.all(
    found.map(async ({ member, rows }) => [member, await namesOf(member, rows)] as const),
  );
  const nameIn = new Map(names);
  return {
    hits: merged.map(({ member, row }) => toHit(member, row, nameIn.get(member)?.(row.authorId) ?? "")),
    matches: found.reduce((sum, { matches }) => sum + Math.min(matches, MOST_MATCHES), 0),
    isMore: found.some(({ matches }) => matches > MOST_MATCHES),
    corrected: found.find(({ corrected }) => corrected !== null)?.corrected ?? null,
  };
}

function namesOf(member: Member, rows: readonly Row[]): Promise<(userId: string) => string> {
  return displayNames(
    member,
    rows.map((row) => row.authorId),
  );
}

function bestFirst(a: { readonly row: Row }, b: { readonly row: Row }): number {
  return b.row.weight - a.row.weight || b.row.changedAt.getTime() - a.row.changedAt.getTime();
}

function toHit({ spaceSlug, spaceName }: Member, row: Row, authorName: string): SearchHit {
  const { kind, titleMarked, keywordsMarked, bodyMarked, authorId, weight, matches, ...shown } = row;
  return {
    ...shown,
    kind: storedWord(SEARCH_KINDS, kind),
    spaceSlug,
    spaceName,
    title: markedParts(titleMarked),
    excerpts: [markedParts(keywordsMarked), markedParts(bodyMarked)].filter(hasMatch),
    authorName,
  };
}
