import "server-only";
import type { QuantityId } from "@/lib/calc/ledger";
import { BREW_STATES } from "@/lib/model/brew";
import { brewCurves, brewSummary } from "@/lib/model/summary/brew-summary";
import { MOST_BREWS, type BrewFilter } from "@/lib/model/summary/brew-filter";
import { MOST_OF_BREWS_PAGE } from "@/lib/model/summary/brews-page";
import type { BrewAmongOthers } from "@/lib/model/summary/compared-brew";
import { displayNames } from "../accounts/names";
import { inSpace, readSpace, type SpaceTransaction } from "../db";
import type { Member } from "../session";
import { storedWord } from "../stored-word";
import { MADE_WITH } from "./made-with";
import { remakeEach } from "./stale";

/** As many as a reader waits for; the rest is told to be on its way. */
const MADE_FOR_A_READER = MOST_OF_BREWS_PAGE;

interface Row {
  readonly id: string;
  readonly title: string;
  readonly recipeId: string;
  readonly recipeRev: number;
  readonly sharedBrewId: string | null;
  readonly sharedBrewTitle: string | null;
  readonly brewerId: string;
  readonly equipmentId: string;
  readonly equipmentName: string | null;
  readonly equipmentKind: string | null;
  readonly state: string;
  readonly startedAt: Date | null;
  /** As text: the client would read it twice. null where it is stale. */
  readonly summary: string | null;
  readonly curves: string | null;
}

interface Parts {
  readonly withCurves?: boolean;
  /** Of each summary only this figure and the counts, where many are read to be held against each other by it. */
  readonly onlyFigure?: QuantityId | null;
}

/**
 * The brews of a club that pass a filter, the latest first, each with what it comes to. Of those whose summary is stale
 * some are made anew at once; the others have none, so that nothing stale is taken for fresh.
 */
export async function listSummaries(
  member: Member,
  filter: BrewFilter,
  parts: Parts = {},
): Promise<readonly BrewAmongOthers[]> {
  const { spaceId, userId } = member;
  const rows = await readSpace({ spaceId, userId }, (tx) => findRows(tx, spaceId, filter, parts));
  const stale = rows.flatMap(({ id, summary }) => (summary === null ? [id] : [])).slice(0, MADE_FOR_A_READER);
  await remakeEach(spaceId, stale);
  const again = (): Promise<readonly Row[]> =>
    inSpace(spaceId, userId, (tx) => findRows(tx, spaceId, { ids: stale }, parts));
  const remade = new Map((stale.length === 0 ? [] : await again()).map((row) => [row.id, row]));
  const nameOf = await displayNames(
    { spaceId, userId },
    rows.map(({ brewerId }) => brewerId),
  );
  return rows.map((row) => toBrew(remade.get(row.id) ?? row, nameOf));
}

function findRows(
  tx: SpaceTransaction,
  spaceId: string,
  filter: BrewFilter,
  { withCurves = false, onlyFigure = null }: Parts,
): Promise<readonly Row[]> {
  const { recipeId = null, sharedBrewId = null, brewerId = null, state = null, from = null, to = null } = filter;
  const ids = filter.ids ?? null;
  return tx.$queryRaw<Row[]>`
    SELECT b.id::text, b.title, b.recipe_id::text AS "recipeId", b.recipe_rev AS "recipeRev",
           b.shared_brew_id::text AS "sharedBrewId", sb.title AS "sharedBrewTitle",
           b.brewer_user_id::text AS "brewerId", b.equipment_id::text AS "equipmentId",
           b.equipment_snapshot ->> 'name' AS "equipmentName",
           b.equipment_snapshot #>> '{mash,kind}' AS "equipmentKind", b.state, b.started_at AS "startedAt",
           CASE WHEN s.summary IS NULL THEN NULL
                WHEN ${onlyFigure}::text IS NULL THEN s.summary::text
                ELSE jsonb_build_object(
                  'figures', jsonb_path_query_array(s.summary, '$.figures[*] ? (@.quantity == $asked)',
                                                    jsonb_build_object('asked', ${onlyFigure}::text)),
                  'account', NULL, 'suspects', '[]'::jsonb, 'counts', s.summary -> 'counts')::text END AS summary,
           CASE WHEN ${withCurves} THEN s.curves::text END AS curves
    FROM brew b
    LEFT JOIN brew_summary s ON s.space_id = b.space_id AND s.brew_id = b.id AND s.calc_version = ${MADE_WITH}
      AND NOT EXISTS (SELECT FROM brew_mark m WHERE m.space_id = b.space_id AND m.brew_id = b.id)
    LEFT JOIN shared_brew sb ON sb.space_id = b.space_id AND sb.id = b.shared_brew_id
    WHERE b.space_id = ${spaceId}::uuid AND b.dropped_at IS NULL
      AND (${recipeId}::uuid IS NULL OR b.recipe_id = ${recipeId}::uuid)
      AND (${sharedBrewId}::uuid IS NULL OR b.shared_brew_id = ${sharedBrewId}::uuid)
      AND (${brewerId}::uuid IS NULL OR b.brewer_user_id = ${brewerId}::uuid)
      AND (${state}::text IS NULL OR b.state = ${state}::text)
      AND (${from}::date IS NULL OR b.started_at >= ${from}::timestamp AT TIME ZONE 'UTC')
      AND (${to}::date IS NULL OR b.started_at < (${to}::timestamp + interval '1 day') AT TIME ZONE 'UTC')
      AND (${ids}::uuid[] IS NULL OR b.id = ANY (${ids}::uuid[]))
    ORDER BY b.started_at DESC NULLS LAST, b.id
    LIMIT ${MOST_BREWS}`;
}

function toBrew({ summary, curves, ...row }: Row, nameOf: (userId: string) => string): BrewAmongOthers {
  return {
    ...row,
    brewerName: nameOf(row.brewerId),
    equipmentName: row.equipmentName ?? "",
    equipmentKind: row.equipmentKind ?? "",
    state: storedWord(BREW_STATES, row.state),
    summary: summary === null ? null : brewSummary.parse(JSON.parse(summary)),
    curves: curves === null ? [] : brewCurves.parse(JSON.parse(curves)),
  };
}
