import "server-only";
import type { BrewEvidence } from "@/lib/calc/learn";
import { keptEvidence } from "@/lib/model/learning/brew-evidence";
import { inSpace } from "../db";
import type { Member } from "../session";
import { MADE_WITH } from "../summaries/made-with";
import { remakeEach } from "../summaries/stale";

/** As many as a reader waits for; the others count the next time. */
const MADE_FOR_A_READER = 40;
/** A club's kettles of one kind, in what the pooling takes. */
const MOST_BREWS = 5000;

/** For whom it is read: somebody, or the program. */
export type SpaceReader = Pick<Member, "spaceId" | "userId">;

/** A brew that says something of its kettle. */
export interface TellingBrew {
  readonly id: string;
  readonly title: string;
  readonly equipmentId: string;
  readonly startedAt: Date;
  readonly evidence: BrewEvidence;
}

interface Row extends Omit<TellingBrew, "evidence"> {
  readonly isFresh: boolean;
  readonly evidence: string | null;
}

/** The brews on these kettles that say something of them, in order of time. */
export async function listEvidence(
  member: SpaceReader,
  equipmentIds: readonly string[],
): Promise<readonly TellingBrew[]> {
  const { spaceId } = member;
  if (equipmentIds.length === 0) return [];
  const rows = await findRows(member, equipmentIds);
  const stale = rows.filter(({ isFresh }) => !isFresh).slice(0, MADE_FOR_A_READER);
  await remakeEach(
    spaceId,
    stale.map(({ id }) => id),
  );
  const present = stale.length === 0 ? rows : await findRows(member, equipmentIds);
  return present.flatMap(({ isFresh, evidence, ...brew }) =>
    isFresh && evidence !== null ? [{ ...brew, evidence: keptEvidence.parse(JSON.parse(evidence)) }] : [],
  );
}

function findRows({ spaceId, userId }: SpaceReader, equipmentIds: readonly string[]): Promise<readonly Row[]> {
  return inSpace(
    spaceId,
    userId,
    (tx) => tx.$queryRaw<Row[]>`
      SELECT b.id::text, b.title, b.equipment_id::text AS "equipmentId", b.started_at AS "startedAt",
             COALESCE(s.calc_version = ${MADE_WITH}, false)
               AND NOT EXISTS (SELECT FROM brew_mark m WHERE m.space_id = b.space_id AND m.brew_id = b.id) AS "isFresh",
             s.evidence::text
      FROM brew b LEFT JOIN brew_summary s ON s.space_id = b.space_id AND s.brew_id = b.id
      WHERE b.space_id = ${spaceId}::uuid AND b.equipment_id = ANY (${equipmentIds}::uuid[])
        AND b.dropped_at IS NULL AND b.started_at IS NOT NULL
      ORDER BY b.started_at, b.id LIMIT ${MOST_BREWS}`,
  );
}
