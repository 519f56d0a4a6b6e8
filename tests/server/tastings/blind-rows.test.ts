import { beforeAll, describe, expect, it } from "vitest";
import { directory, inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { closeTasting, revealTasting } from "@/lib/server/tastings/close";
import { newClub } from "../../support/club";
import { connectAs, insert } from "../../support/sql-session";
import { openedTasting, type OpenTasting } from "../../support/tasting";

const TABLES = [
  "tasting_identity",
  "tasting_glass_key",
  "tasting_entry",
  "tasting_serving",
  "tasting_glass",
  "tasting_panel",
] as const;

/** How many rows of a tasting a reader gets, in the role of the application and without any check of ours. */
async function visibleTo({ spaceId, userId }: Member, tastingId: string): Promise<Readonly<Record<string, number>>> {
  const client = await connectAs("gyle_app", { spaceId, userId });
  try {
    const found: Record<string, number> = {};
    for (const table of TABLES) {
      const { rows } = await client.query<{ n: number }>(
        `SELECT count(*)::int AS n FROM ${table} WHERE tasting_id = $1`,
        [tastingId],
      );
      found[table] = rows[0]?.n ?? NaN;
    }
    return found;
  } finally {
    await client.end();
  }
}

const refusedAs = async ({ spaceId, userId }: Member, sql: string, values: readonly unknown[]): Promise<string> => {
  const client = await connectAs("gyle_app", { spaceId, userId });
  try {
    return await client.query(sql, [...values]).then(
      ({ rowCount }) => `${String(rowCount)} rows`,
      (error: unknown) => String(error),
    );
  } finally {
    await client.end();
  }
};

let tasting: OpenTasting;
// Six entries; three judges with four servings and three glasses each; eight places in the two panels.
const ALL = {
  tasting_identity: 6,
  tasting_glass_key: 9,
  tasting_entry: 6,
  tasting_serving: 12,
  tasting_glass: 9,
  tasting_panel: 8,
};

beforeAll(async () => {
  tasting = await openedTasting({ triangle: true });
}, 120_000);

describe("the rows of an open tasting", () => {
  it("are all the steward's", async () => {
    expect(await visibleTo(tasting.steward, tasting.id)).toEqual(ALL);
  });

  it("show a judge the own glasses and codes, a pourer all codes, and neither what is in them", async () => {
    const blind = { tasting_identity: 0, tasting_glass_key: 0, tasting_panel: 8 };
    for (const judge of tasting.judges) {
      const own = { tasting_entry: 4, tasting_serving: 4, tasting_glass: 3 };
      expect(await visibleTo(judge, tasting.id)).toEqual({ ...blind, ...own });
    }
    const poured = { tasting_entry: 6, tasting_serving: 12, tasting_glass: 9 };
    expect(await visibleTo(tasting.pourer, tasting.id)).toEqual({ ...blind, ...poured });
  });

  it("show an organiser and a brewer who have no part in it who does, and another club nothing", async () => {
    const nothing = {
      tasting_identity: 0,
      tasting_glass_key: 0,
      tasting_entry: 0,
      tasting_serving: 0,
      tasting_glass: 0,
    };
    for (const reader of [tasting.organiser, tasting.brewer]) {
      expect(await visibleTo(reader, tasting.id)).toEqual({ ...nothing, tasting_panel: 8 });
    }
    const { organiser: stranger } = await newClub();
    expect(await visibleTo(stranger, tasting.id)).toEqual({ ...nothing, tasting_panel: 0 });
  });

  it("cannot be claimed: nobody becomes steward, writes an identity or opens the state by hand", async () => {
    const { organiser, judges, id, entryNos } = tasting;
    const [judge] = judges;
    for (const reader of [organiser, judge]) {
      const { spaceId, userId } = reader;
      expect(await refusedAs(reader, "UPDATE tasting SET steward_id = $1 WHERE id = $2", [userId, id])).toContain(
        "a tasting keeps its steward",
      );
      expect(await refusedAs(reader, "UPDATE tasting SET state = 'draft' WHERE id = $1", [id])).toContain(
        "a tasting that is open does not become draft",
      );
      const reveal = "UPDATE tasting SET state = 'revealed', revealed_at = now(), revealed_by = $1 WHERE id = $2";
      expect(await refusedAs(reader, reveal, [userId, id])).toContain(
        "a tasting that is open does not become revealed",
      );
      const claim =
        "INSERT INTO tasting_identity (space_id, tasting_id, entry_no, beer_name) VALUES ($1, $2, $3, 'Mine')";
      expect(await refusedAs(reader, claim, [spaceId, id, entryNos[0]])).toMatch(
        /row-level security|not prepared any more/,
      );
      expect(await refusedAs(reader, "DELETE FROM tasting_identity WHERE tasting_id = $1", [id])).toBe("0 rows");
      expect(await refusedAs(reader, "DELETE FROM tasting WHERE id = $1", [id])).toMatch(/0 rows/);
    }
  });

  it("keep an own beer and the steward out of the panel, by the database itself", async () => {
    const { steward, brewer, brewIds } = tasting;
    const { spaceId, userId } = steward;
    const client = await connectAs("gyle_app", { spaceId, userId });
    const draft = crypto.randomUUID();
    const key = { space_id: spaceId, tasting_id: draft };
    const head = { space_id: spaceId, id: draft, title: "By hand", steward_id: userId, created_by: userId };
    await insert(client, "tasting", head);
    await insert(client, "tasting_flight", { ...key, flight_no: 1, title: "One", kind: "scored" });
    await insert(client, "tasting_entry", { ...key, entry_no: 417, flight_no: 1 });
    const identity = { ...key, entry_no: 417, brew_id: brewIds[0], brewer_user_id: brewer.userId };
    await insert(client, "tasting_identity", identity);
    const part = { ...key, flight_no: 1, part: "judge" };
    await expect(insert(client, "tasting_panel", { ...part, user_id: userId })).rejects.toThrow(
      "steward does not judge",
    );
    await insert(client, "tasting_panel", { ...part, user_id: brewer.userId });
    const serving = { ...key, flight_no: 1, judge_id: brewer.userId, position: 1, entry_no: 417 };
    await expect(insert(client, "tasting_serving", serving)).rejects.toThrow("nobody judges an own beer");
    const glass = { ...key, flight_no: 1, judge_id: brewer.userId, position: 1, glass_no: 222 };
    await insert(client, "tasting_glass", glass);
    const answer = { ...key, glass_no: 222, entry_no: 417 };
    await expect(insert(client, "tasting_glass_key", answer)).rejects.toThrow("nobody tells an own beer from another");
    await client.end();
  });
});

describe("the reveal", () => {
  it("shows the club everything, another club nothing, and is in the audit log with who did it", async () => {
    const { organiser, steward, brewer, id } = tasting;
    await closeTasting(steward, { id });
    expect(await visibleTo(organiser, id)).toMatchObject({ tasting_identity: 0, tasting_glass_key: 0 });
    await revealTasting(organiser, { id });
    for (const reader of [organiser, brewer, tasting.judges[0]]) expect(await visibleTo(reader, id)).toEqual(ALL);
    const { organiser: stranger } = await newClub();
    expect((await visibleTo(stranger, id)).tasting_identity).toBe(0);
    const noted = await directory.auditLog.findMany({ where: { action: "reveal", target: id } });
    expect(noted).toMatchObject([{ actor: organiser.userId, outcome: "ok", spaceId: organiser.spaceId }]);
    const kept = await inSpace(organiser.spaceId, organiser.userId, (tx) =>
      tx.tasting.findUniqueOrThrow({ where: { spaceId_id: { spaceId: organiser.spaceId, id } } }),
    );
    expect(kept).toMatchObject({ state: "revealed", revealedBy: organiser.userId });
  });
});
