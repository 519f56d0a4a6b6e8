import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { applyMigrations } from "@/lib/ops/apply-migrations";
import { startThrowAwayDatabase } from "@/lib/ops/embedded-database.mjs";
import { moveSpace } from "@/lib/ops/move/move-space";
import { movedTables } from "@/lib/ops/move/tables";
import { findBrew } from "@/lib/server/brews/reads";
import { directory, inSpace } from "@/lib/server/db";
import { storeEvents } from "@/lib/server/log/ingest";
import { findRecipe } from "@/lib/server/recipes/reads";
import type { Member } from "@/lib/server/session";
import { newBrewing } from "../../support/brewing";
import { gravityOf } from "../../support/cellar";
import { newClub } from "../../support/club";
import { MIGRATIONS } from "../../support/database";
import { moverAddress } from "../../support/mover";
import { withClient } from "../../support/open-client";

const PATIENCE = 120_000;
const WRITERS = 2;

let second: Awaited<ReturnType<typeof startThrowAwayDatabase>>;
let addresses: ReadonlyMap<number, string>;

beforeAll(async () => {
  second = await startThrowAwayDatabase("gylebook");
  await applyMigrations({ databaseUrl: second.url, folder: MIGRATIONS });
  process.env.DATABASE_URL_1 = second.url;
  const first = process.env.DATABASE_URL ?? "";
  addresses = new Map([
    [0, await moverAddress(first, process.env.SUPERUSER_URL_TEST ?? "")],
    [1, await moverAddress(second.url, second.superuserUrl)],
  ]);
}, PATIENCE);

afterAll(async () => {
  await directory.$disconnect();
  delete process.env.DATABASE_URL_1;
  await second.stop();
}, PATIENCE);

async function clubWithBrew() {
  const club = await newClub("member");
  return { ...club, ...(await newBrewing(club.organiser, club.member)) };
}

/** All rows of a club on one server, past row-level security. */
async function rowsOn(number: number, { spaceId }: Member): Promise<Readonly<Record<string, number>>> {
  return withClient(addresses.get(number) ?? "", async (client) => {
    const found: Record<string, number> = {};
    for (const { name, owner } of await movedTables(client)) {
      const { rowCount } = await client.query(`SELECT FROM "${name}" WHERE "${owner}" = $1`, [spaceId]);
      if ((rowCount ?? 0) > 0) found[name] = rowCount ?? 0;
    }
    return found;
  });
}

/** Writes entries of a log and raises a number, one after the other, until it is told to stop; says what was acknowledged. */
function startWriting(member: Member, { brewId, recipeId }: { readonly brewId: string; readonly recipeId: string }) {
  const acknowledged = { ids: [] as string[], raised: 0 };
  const state = { isOver: false };
  const { spaceId, userId } = member;
  const log = async (): Promise<void> => {
    while (!state.isOver) {
      const event = gravityOf(brewId, 1, 1.05, { id: randomUUID(), deviceId: randomUUID() });
      const [fate] = await storeEvents(member, [{ event, actorId: userId, sentAt: null, clockOffsetMs: null }]);
      if (fate?.fate === "stored") acknowledged.ids.push(event.id);
    }
  };
  const raise = async (): Promise<void> => {
    while (!state.isOver) {
      await inSpace(
        spaceId,
        userId,
        (tx) => tx.$executeRaw`UPDATE recipe SET title = (title::int + 1)::text WHERE id = ${recipeId}::uuid`,
      );
      acknowledged.raised++;
    }
  };
  const work = [...Array.from({ length: WRITERS }, () => log()), raise()];
  const stop = async () => {
    state.isOver = true;
    await Promise.all(work);
    return acknowledged;
  };
  return { acknowledged, stop };
}

describe("moving a club to another server", () => {
  it(
    "loses and doubles nothing of what is written meanwhile, there and back, and touches no other club",
    async () => {
      const [club, other] = [await clubWithBrew(), await clubWithBrew()];
      const { member, recipeId, brewId } = club;
      const before = { mine: await rowsOn(0, member), others: await rowsOn(0, other.member) };
      const { spaceId, userId } = member;
      await inSpace(
        spaceId,
        userId,
        (tx) => tx.$executeRaw`UPDATE recipe SET title = '0' WHERE id = ${recipeId}::uuid`,
      );
      const writing = startWriting(member, club);
      const [there, foreign] = await Promise.all([
        (async () => {
          await expect.poll(() => writing.acknowledged.ids.length).toBeGreaterThan(10);
          const moved = [];
          for (const to of [1, 0]) {
            moved.push(await moveSpace({ slug: member.spaceSlug, to, addresses }));
            const reached = writing.acknowledged.ids.length;
            await expect.poll(() => writing.acknowledged.ids.length).toBeGreaterThan(reached + 10);
          }
          return moved;
        })(),
        inSpace(other.member.spaceId, other.member.userId, (tx) => tx.recipe.count({ where: { spaceId } })),
      ]);
      const { ids, raised } = await writing.stop();
      const kept = await inSpace(spaceId, userId, (tx) =>
        tx.brewEvent.findMany({ where: { spaceId, brewId }, select: { id: true } }),
      );
      expect(kept.map(({ id }) => id).sort()).toEqual([...ids].sort());
      expect((await findRecipe(member, recipeId))?.title).toBe(String(raised));
      expect(there.map((each) => each?.from)).toEqual([0, 1]);
      console.info(
        `Written while a club moved there and back: ${String(ids.length)} entries and ${String(raised)} changes, none lost or doubled; ` +
          `closed for ${there.map((each) => Math.round(each?.closedMs ?? NaN)).join(", ")} ms.`,
      );
      expect(await rowsOn(1, member)).toEqual({});
      expect(Object.keys(await rowsOn(0, member))).toEqual(expect.arrayContaining(Object.keys(before.mine)));
      expect(await rowsOn(0, other.member)).toEqual(before.others);
      expect(await rowsOn(1, other.member)).toEqual({});
      expect(foreign).toBe(0);
    },
    PATIENCE,
  );

  it("leaves the club to work as before, and keeps another club's records from being found", async () => {
    const [club, other] = [await clubWithBrew(), await clubWithBrew()];
    await moveSpace({ slug: club.member.spaceSlug, to: 1, addresses });
    expect((await findBrew(club.member, club.brewId))?.id).toBe(club.brewId);
    expect(await rowsOn(0, club.member)).toEqual({});
    expect(await findBrew(other.member, club.brewId)).toBeNull();
    expect(await findBrew(club.member, other.brewId)).toBeNull();
  });

  it("is not begun where the servers have different tables, and the club stays as it was", async () => {
    const { member, brewId } = await clubWithBrew();
    const before = await rowsOn(0, member);
    await withClient(second.url, (client) => client.query("ALTER TABLE recipe ADD COLUMN extra text"));
    await expect(moveSpace({ slug: member.spaceSlug, to: 1, addresses })).rejects.toThrow(/not have the same tables/);
    await withClient(second.url, (client) => client.query("ALTER TABLE recipe DROP COLUMN extra"));
    expect(await rowsOn(0, member)).toEqual(before);
    expect((await findBrew(member, brewId))?.id).toBe(brewId);
  });

  it("opens the door again when the new place cannot take the rows", async () => {
    const { member, brewId } = await clubWithBrew();
    await withClient(second.superuserUrl, (client) =>
      client.query("ALTER TABLE recipe ADD CONSTRAINT none_of_it CHECK (title <> 'Bitter at last') NOT VALID"),
    );
    await inSpace(
      member.spaceId,
      member.userId,
      (tx) => tx.$executeRaw`UPDATE recipe SET title = 'Bitter at last' WHERE space_id = ${member.spaceId}::uuid`,
    );
    await expect(moveSpace({ slug: member.spaceSlug, to: 1, addresses })).rejects.toThrow(/none_of_it/);
    await withClient(second.superuserUrl, (client) => client.query("ALTER TABLE recipe DROP CONSTRAINT none_of_it"));
    expect((await findBrew(member, brewId))?.id).toBe(brewId);
    expect(await moveSpace({ slug: member.spaceSlug, to: 1, addresses })).toMatchObject({ from: 0 });
  });

  it("is finished by the same command where it was cut off after the directory was changed", async () => {
    const { member, brewId } = await clubWithBrew();
    await moveSpace({ slug: member.spaceSlug, to: 1, addresses });
    await withClient(addresses.get(1) ?? "", (client) =>
      client.query("INSERT INTO space_place (space_id, state) VALUES ($1, 'gone')", [member.spaceId]),
    );
    expect(await moveSpace({ slug: member.spaceSlug, to: 1, addresses })).toBeNull();
    expect((await findBrew(member, brewId))?.id).toBe(brewId);
  });
});
