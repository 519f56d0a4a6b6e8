import { describe, expect, it } from "vitest";
import { acrossServers, inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { remakeStale, spacesWithStale } from "@/lib/server/summaries/stale";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";

const BREWS = 24;

async function clubWithBrews() {
  const club = await newClub("member");
  const { brewId } = await newBrewing(club.organiser, club.member);
  const { spaceId, userId } = club.member;
  await inSpace(
    spaceId,
    userId,
    (tx) => tx.$executeRaw`
      INSERT INTO brew SELECT (jsonb_populate_record(b, jsonb_build_object(
        'id', gen_random_uuid(), 'shared_brew_id', NULL, 'plan_version', NULL))).*
      FROM brew b, generate_series(2, ${BREWS}::int)
      WHERE b.space_id = ${spaceId}::uuid AND b.id = ${brewId}::uuid`,
  );
  return club.member;
}

/** How often each summary of the club was made, and what is still marked. */
const made = ({ spaceId, userId }: Member) =>
  inSpace(spaceId, userId, async (tx) => {
    const rows = await tx.brewSummary.findMany({ where: { spaceId }, select: { madeRev: true } });
    return {
      times: rows.map(({ madeRev }) => Number(madeRev)),
      marks: await tx.brewMark.count({ where: { spaceId } }),
    };
  });

describe("the making of summaries", () => {
  it("is found by one statement for all clubs, which names those where something is stale", async () => {
    const [stale, fresh] = [await clubWithBrews(), await clubWithBrews()];
    await remakeStale(fresh.spaceId, 0);
    const found = await spacesWithStale(0);
    expect(found).toContain(stale.spaceId);
    expect(found).not.toContain(fresh.spaceId);
  });

  it("is shared by two who work at once, and no brew is made twice", async () => {
    const member = await clubWithBrews();
    const shares = await Promise.all([remakeStale(member.spaceId, 0), remakeStale(member.spaceId, 0)]);
    expect(shares[0] + shares[1]).toBe(BREWS);
    expect(await made(member)).toEqual({ times: Array.from({ length: BREWS }, () => 1), marks: 0 });
  });

  it("passes over the brews that somebody else is making, and does not wait for them", async () => {
    const { spaceId, userId } = await clubWithBrews();
    await remakeStale(spaceId, 0);
    await inSpace(
      spaceId,
      userId,
      (tx) => tx.$executeRaw`
        INSERT INTO brew_mark (space_id, brew_id) SELECT space_id, id FROM brew WHERE space_id = ${spaceId}::uuid`,
    );
    const beside = await inSpace(spaceId, userId, async (tx) => {
      await tx.$queryRaw`
        SELECT made_rev FROM brew_summary WHERE space_id = ${spaceId}::uuid ORDER BY brew_id LIMIT ${BREWS / 2} FOR UPDATE`;
      return remakeStale(spaceId, 0);
    });
    expect(beside).toBe(BREWS / 2);
    expect(await remakeStale(spaceId, 0)).toBe(BREWS / 2);
  });

  it("leaves a brew that was made a moment ago until it has rested, and finds what another version made", async () => {
    const { spaceId, userId } = await clubWithBrews();
    await remakeStale(spaceId, 0);
    await inSpace(
      spaceId,
      userId,
      (tx) => tx.$executeRaw`INSERT INTO brew_mark (space_id, brew_id)
        SELECT space_id, id FROM brew WHERE space_id = ${spaceId}::uuid LIMIT 1`,
    );
    expect(await spacesWithStale(3600)).not.toContain(spaceId);
    expect(await spacesWithStale(0)).toContain(spaceId);
    await inSpace(
      spaceId,
      userId,
      (tx) => tx.$executeRaw`UPDATE brew_summary SET calc_version = 'of before' WHERE space_id = ${spaceId}::uuid`,
    );
    expect(await spacesWithStale(3600)).toContain(spaceId);
  });

  it("tells nobody more than which clubs they are", async () => {
    await clubWithBrews();
    const shown = await acrossServers(
      (client) => client.$queryRaw<{ n: number }[]>`
        SELECT (SELECT count(*) FROM brew_mark)::int + (SELECT count(*) FROM brew_summary)::int AS n`,
    );
    expect(shown).toEqual([{ n: 0 }]);
  });
});
