import { describe, expect, it } from "vitest";
import { GET } from "@/app/api/v1/brews/route";
import { brewsPage } from "@/lib/model/summary/brews-page";
import { planBrew } from "@/lib/server/brews/plan";
import { brewOf, newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";
import { newKey } from "../../support/sensors";

const ask = (key: string | null, query = "") =>
  GET(
    new Request(`http://localhost:3000/api/v1/brews${query}`, {
      headers: key === null ? {} : { authorization: `Bearer ${key}` },
    }),
    undefined,
  );
const page = async (key: string, query = "") => brewsPage.parse(await (await ask(key, query)).json());

describe("the brews of a club for programs", () => {
  it("come in pages, each brew once, with their quantities", async () => {
    const { organiser, member } = await newClub("member");
    const brewing = await newBrewing(organiser, member);
    for (let n = 0; n < 4; n++) await planBrew(member, brewOf({ ...brewing, sharedBrewId: null }));
    const key = await newKey(member);
    const ids: string[] = [];
    let after: string | null = "";
    while (after !== null) {
      const found: Awaited<ReturnType<typeof page>> = await page(
        key,
        `?limit=2${after === "" ? "" : `&after=${after}`}`,
      );
      ids.push(...found.brews.map(({ id }) => id));
      expect(found.brews.every(({ figures }) => (figures ?? []).length > 0)).toBe(true);
      after = found.next;
    }
    expect(ids).toHaveLength(5);
    expect(new Set(ids).size).toBe(5);
  });

  it("are those of the key's club, and of a key for one brew that one alone", async () => {
    const { organiser, member } = await newClub("member");
    const { brewId, ...rest } = await newBrewing(organiser, member);
    await planBrew(member, brewOf({ ...rest, sharedBrewId: null }));
    const elsewhere = await newClub();
    expect((await page(await newKey(elsewhere.organiser))).brews).toEqual([]);
    expect((await page(await newKey(member, brewId))).brews.map(({ id }) => id)).toEqual([brewId]);
  });

  it("are for nobody without a key, and a wrong query is refused by name", async () => {
    const { organiser } = await newClub();
    expect((await ask(null)).status).toBe(401);
    const refused = await ask(await newKey(organiser), "?limit=1000&before=x");
    expect(refused.status).toBe(400);
    expect(JSON.stringify(await refused.json())).toContain("limit");
  });
});
