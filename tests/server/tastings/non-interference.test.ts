import { randomUUID } from "node:crypto";
import { beforeAll, describe, expect, it } from "vitest";
import { searchInput } from "@/lib/model/search";
import { exportClub } from "@/lib/server/club-file/export-club";
import { search } from "@/lib/server/search/find";
import type { Member } from "@/lib/server/session";
import { findPreparation } from "@/lib/server/tastings/preparation";
import { newBrewing } from "../../support/brewing";
import { join } from "../../support/club";
import { READS, type Ids } from "../../support/every-read";
import { turnWorld } from "../../support/other-world";
import { openedTasting, type OpenTasting } from "../../support/tasting";

const NOW = new Date("2027-04-24T12:00:00Z");

type Answers = Readonly<Record<string, string>>;

/** As a page or a program would have it: a map is its entries. When something was read is no secret. */
function written(answer: unknown): string {
  return JSON.stringify([answer], (key, value: unknown) => {
    if (value instanceof Map) return [...value];
    return key === "readAt" ? undefined : value;
  });
}

/** Everything that the services give a reader: every read, what the search finds by name and code, and the club's file. */
async function everythingFor(reader: Member, ids: Ids, words: readonly string[]): Promise<Answers> {
  const answers: Record<string, string> = {};
  for (const [name, read] of Object.entries(READS)) {
    answers[name] = await read(reader, ids).then(written, (error: unknown) => `refused: ${String(error)}`);
  }
  for (const word of words) {
    answers[`search ${word}`] = written(await search(reader, searchInput.parse({ q: word })));
  }
  answers["club file"] = await exportClub(reader, NOW).then(
    (parts) => [...parts].join(""),
    (error: unknown) => `refused: ${String(error)}`,
  );
  return answers;
}

let tasting: OpenTasting;
let readers: Readonly<Record<string, Member>>;
let ids: Ids;
let words: readonly string[];

beforeAll(async () => {
  tasting = await openedTasting({ triangle: true });
  const { organiser, brewer, judges, pourer } = tasting;
  readers = { judge: judges[0], brewer, organiser, pourer, guest: await join(organiser, "guest") };
  const nothing = randomUUID();
  ids = {
    ...(await newBrewing(organiser, brewer)),
    brewId: tasting.brewIds[0] ?? nothing,
    tastingId: tasting.id,
    ...{ lotId: nothing, ingredientId: nothing, orderId: nothing, noticeId: nothing, photoId: nothing },
    ...{ trialId: nothing, comparisonId: nothing },
  };
  words = ["Hedgerow", "Towpath", ...tasting.entryNos.map(String)];
}, 120_000);

describe("before the reveal", () => {
  it("no answer to anybody but the steward depends on which entry is which beer", async () => {
    const before: Record<string, Answers> = {};
    for (const [who, reader] of Object.entries(readers)) before[who] = await everythingFor(reader, ids, words);
    const known = written(await findPreparation(tasting.steward, tasting.id));
    await turnWorld(tasting.id);
    for (const [who, reader] of Object.entries(readers)) {
      expect(await everythingFor(reader, ids, words), who).toEqual(before[who]);
    }
    // The worlds do differ, and the test would see it.
    expect(written(await findPreparation(tasting.steward, tasting.id))).not.toBe(known);
  }, 240_000);

  it("no answer about the tasting to anybody but the steward names a beer or a brew in it", async () => {
    const secrets = ["Hedgerow", "Towpath", "Millpond", "Lantern", "Wharf", "Orchard", "neighbour", ...tasting.brewIds];
    const about = ["findTasting", "listTastings", "findPreparation", "findPourList", "findJudgeSheet", "findJudged"];
    for (const [who, reader] of Object.entries(readers)) {
      const answers = await everythingFor(reader, ids, []);
      for (const name of [...about, "listNotices"]) {
        for (const secret of secrets) expect(answers[name], `${name} to ${who}`).not.toContain(secret);
      }
    }
  }, 120_000);

  it("no answer that names a brew tells that it is tasted", async () => {
    const answers = await everythingFor(readers["judge"] ?? tasting.organiser, ids, words);
    for (const name of ["findBrew", "listBrews", "listRegister", "listSummaries", "listBrewPage", "listPourable"]) {
      expect(answers[name], name).not.toContain(tasting.id);
      expect(answers[name], name).not.toContain("Spring tasting");
    }
    expect(answers["findBrew"]).toContain(ids.brewId);
  }, 120_000);
});
