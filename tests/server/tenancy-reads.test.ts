import { randomUUID } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { newComparison } from "@/lib/model/summary/saved-comparison";
import { newPublication } from "@/lib/model/publication";
import { findBrew } from "@/lib/server/brews/reads";
import { saveComparison } from "@/lib/server/comparisons/writes";
import { importRecipes } from "@/lib/server/exchange/import-recipes";
import { createIngredient } from "@/lib/server/ingredients/writes";
import { createInvitation } from "@/lib/server/invitations/writes";
import { createLot } from "@/lib/server/lots/writes";
import { listNotices } from "@/lib/server/notices/reads";
import { keepPhoto } from "@/lib/server/photos/writes";
import { publishRecipe } from "@/lib/server/publications/writes";
import { postReadings } from "@/lib/server/sensors/post-readings";
import type { Member } from "@/lib/server/session";
import { changePlan } from "@/lib/server/shared-brews/change-plan";
import { newBrewing } from "../support/brewing";
import { ENDED, newFermentation, withDryHop } from "../support/cellar";
import { newClub } from "../support/club";
import { beerJsonFile } from "../support/exchange-files";
import { beginTrial } from "@/lib/server/trials/begin";
import { moveBrew } from "@/lib/server/brews/move";
import { hopLot, ownHop } from "../support/lots";
import { newOrdering } from "../support/ordering";
import { noisyJpeg } from "../support/pictures";
import { newSender, sentReading } from "../support/sensors";
import { planChangeOf } from "../support/shared-brew";
import { openTastingOf, packagedBrew } from "../support/tasting";
import { type Ids, NOTHING_THERE, OF_NO_CLUB, READS, TO_THE_BREWER } from "../support/every-read";

const savedComparison = () => ({
  ...{ id: randomUUID(), name: "Kept", quantity: "fermenter.originalExtract", as: "measured", group: "brewer" },
  ...{ recipe: "", sharedBrew: "", brewer: "", state: "", from: "", to: "" },
});

let owner: Member;
let brewer: Member;
let outsider: Member;
let ids: Ids;
let secrets: readonly string[];
const folder = mkdtempSync(join(tmpdir(), "gylebook-reads-"));

afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

beforeAll(async () => {
  vi.stubEnv("BLOB_FOLDER", folder);
  const club = await newClub("member");
  owner = club.organiser;
  brewer = club.member;
  outsider = (await newClub()).organiser; // may do everything, but in another club
  const brewing = await newBrewing(owner, brewer);
  await packagedBrew(owner);
  await newFermentation(owner, { recipe: withDryHop(), gravities: ENDED });
  await importRecipes(owner, { bytes: beerJsonFile(), kettle: null, chosen: [0] });
  await publishRecipe(owner, newPublication.parse({ recipeId: brewing.recipeId, rev: 1 }));
  await createInvitation(owner, { role: "member", email: null, maxUses: 1, days: 7 });
  await changePlan(owner, planChangeOf(brewing.sharedBrewId));
  const [notice] = await listNotices(brewer);
  ids = {
    ...brewing,
    lotId: (await createLot(owner, hopLot())).id,
    ingredientId: (await createIngredient(owner, ownHop())).id,
    orderId: await newOrdering(owner),
    noticeId: notice?.id ?? "",
    photoId: randomUUID(),
    comparisonId: (await saveComparison(brewer, newComparison.parse(savedComparison()))).id,
    tastingId: await openTastingOf(owner, brewer),
    trialId: (await beginTrial(brewer, brewing.equipmentId)).id,
  };
  await postReadings(
    await newSender(brewer),
    [sentReading(ids.brewId, 1, { quantity: "kettle.postBoil", value: 20, unit: "L" })],
    new Date(),
  );
  const { lockVersion } = (await findBrew(brewer, ids.brewId)) ?? { lockVersion: 0 };
  await moveBrew(brewer, { id: ids.brewId, lockVersion, state: "on the kettle" });
  await keepPhoto(brewer, { id: ids.photoId, brewId: ids.brewId, bytes: await noisyJpeg(8, 8) });
  await postReadings(await newSender(owner), [sentReading(ids.brewId)], new Date());
  secrets = [
    ...Object.values<string>({ ...ids }),
    owner.userId,
    brewer.userId,
    owner.spaceId,
    "Test ale",
    "Invented weir bitter",
  ];
}, 60_000);

/** As a page would have it: a map is its entries. */
function written(answer: unknown): string {
  return JSON.stringify(answer, (_key, value: unknown) => (value instanceof Map ? [...value] : value));
}

const ROOT = fileURLToPath(new URL("../../lib/server/", import.meta.url));

function sourceFiles(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? sourceFiles(path) : path.endsWith(".ts") ? [path] : [];
  });
}

describe("the reads of the services", () => {
  it("have each a row here, or a reason why not", () => {
    const read = /^export (?:async )?function ((?:find|list)[A-Z]\w*)/gm;
    const names = sourceFiles(ROOT).flatMap((path) =>
      [...readFileSync(path, "utf8").matchAll(read)].map(([, name = ""]) => name),
    );
    const covered = [...Object.keys(READS), ...Object.keys(OF_NO_CLUB)];
    expect([...new Set(names)].sort()).toEqual([...covered].sort());
  });

  it.each(Object.keys(READS))("show nothing of a club to another one: %s", async (name) => {
    const read = READS[name] ?? (() => Promise.reject(new Error(name)));
    const seen = written(await read(outsider, ids));
    for (const secret of secrets.filter((one) => one !== "")) expect(seen).not.toContain(secret);
  });

  it.each(Object.keys(READS).filter((name) => !NOTHING_THERE.has(name)))(
    "show it to the club itself, so that the test above can fail: %s",
    async (name) => {
      const read = READS[name] ?? (() => Promise.reject(new Error(name)));
      expect(["", "null", "[]", "{}"]).not.toContain(
        written(await read(TO_THE_BREWER.has(name) ? brewer : owner, ids)),
      );
    },
  );
});
