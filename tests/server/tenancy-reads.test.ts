import { randomUUID } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { newComparison } from "@/lib/model/summary/saved-comparison";
import { newPublication } from "@/lib/model/publication";
import { listAdaptations } from "@/lib/server/adaptations/reads";
import { findDaySheet } from "@/lib/server/brews/day-sheet";
import { findBrew, listBrews } from "@/lib/server/brews/reads";
import { listRegister } from "@/lib/server/brews/register";
import { listDue } from "@/lib/server/cellar/due";
import { findBrewDay, listBrewDays } from "@/lib/server/calendar/brew-days";
import { findComparison, listComparisons } from "@/lib/server/comparisons/reads";
import { saveComparison } from "@/lib/server/comparisons/writes";
import { findDraft, listDrafts } from "@/lib/server/drafts/reads";
import { findEquipment, listEquipment } from "@/lib/server/equipment/reads";
import { listExportReports } from "@/lib/server/exchange/export-reports";
import { importRecipes } from "@/lib/server/exchange/import-recipes";
import { listImports } from "@/lib/server/exchange/imports";
import { findIngredient, listIngredients } from "@/lib/server/ingredients/reads";
import { findUses } from "@/lib/server/ingredients/uses";
import { createIngredient } from "@/lib/server/ingredients/writes";
import { listInvitations } from "@/lib/server/invitations/reads";
import { createInvitation } from "@/lib/server/invitations/writes";
import { listKettleEntries } from "@/lib/server/kettles/entries";
import { listBrewLots } from "@/lib/server/lots/brew-lots";
import { listOffers } from "@/lib/server/lots/offers";
import { findLot, listLots, listMovements } from "@/lib/server/lots/reads";
import { createLot } from "@/lib/server/lots/writes";
import { findNotice, listNotices } from "@/lib/server/notices/reads";
import { listOnHand } from "@/lib/server/orders/on-hand";
import { listOrderers } from "@/lib/server/orders/people";
import { findOrder, listOrders } from "@/lib/server/orders/reads";
import { findPhoto } from "@/lib/server/photos/reads";
import { keepPhoto } from "@/lib/server/photos/writes";
import { listPublications } from "@/lib/server/publications/reads";
import { listResults } from "@/lib/server/publications/result-reads";
import { publishRecipe } from "@/lib/server/publications/writes";
import { findFamily } from "@/lib/server/recipes/family";
import { listRecipePage, listRecipes } from "@/lib/server/recipes/list";
import { listRevisions } from "@/lib/server/recipes/list-revisions";
import { findOrigin } from "@/lib/server/recipes/origin";
import { findRecipe, findRevision } from "@/lib/server/recipes/reads";
import { findReferred } from "@/lib/server/recipes/referred";
import { postReadings } from "@/lib/server/sensors/post-readings";
import { findReadings } from "@/lib/server/sensors/read-back";
import { listSensorKeys } from "@/lib/server/sensors/tokens";
import { listWritableBrews } from "@/lib/server/sensors/writable-brews";
import type { Member } from "@/lib/server/session";
import { findSheet } from "@/lib/server/shared-brews/find-sheet";
import { listOwnBrewDays } from "@/lib/server/shared-brews/own-days";
import { changePlan } from "@/lib/server/shared-brews/change-plan";
import { findPlanBehind } from "@/lib/server/shared-brews/plan-behind";
import { findSharedBrew, findSharedBrewPlan, listPlanVersions, listSharedBrews } from "@/lib/server/shared-brews/reads";
import { listSheets } from "@/lib/server/shared-brews/sheets";
import { listPeople } from "@/lib/server/spaces/reads";
import { listAcross } from "@/lib/server/summaries/across";
import { listSummaries } from "@/lib/server/summaries/reads";
import { newBrewing, parsedEquipment, type Brewing } from "../support/brewing";
import { ENDED, newFermentation, onDay, withDryHop } from "../support/cellar";
import { newClub } from "../support/club";
import { beerJsonFile } from "../support/exchange-files";
import { beginTrial } from "@/lib/server/trials/begin";
import { listEvidence } from "@/lib/server/learning/evidence";
import { listKettlesOfKind } from "@/lib/server/learning/kettles";
import { moveBrew } from "@/lib/server/brews/move";
import { findLearning } from "@/lib/server/learning/learned";
import { kettleKind } from "@/lib/model/learning/kettle-kind";
import { questionOf } from "@/lib/model/summary/question";
import { findTrial, listTrials } from "@/lib/server/trials/reads";
import { hopLot, ownHop } from "../support/lots";
import { newOrdering } from "../support/ordering";
import { noisyJpeg } from "../support/pictures";
import { sampleRecipe } from "../support/sample-recipe";
import { newSender, sentReading } from "../support/sensors";
import { planChangeOf } from "../support/shared-brew";

interface Ids extends Brewing {
  readonly lotId: string;
  readonly ingredientId: string;
  readonly orderId: string;
  readonly noticeId: string;
  readonly photoId: string;
  readonly trialId: string;
  readonly comparisonId: string;
}
const savedComparison = () => ({
  ...{ id: randomUUID(), name: "Kept", quantity: "fermenter.originalExtract", as: "measured", group: "brewer" },
  ...{ recipe: "", sharedBrew: "", brewer: "", state: "", from: "", to: "" },
});

type Read = (member: Member, ids: Ids) => Promise<unknown>;

const revision = ({ recipeId }: Ids) => ({ recipeId, rev: 1 });

/** Every read of the services, asked with identifiers of a club. */
const READS: Readonly<Record<string, Read>> = {
  findBrew: (member, { brewId }) => findBrew(member, brewId),
  findComparison: (member, { comparisonId }) => findComparison(member, comparisonId),
  findDaySheet: (member, { brewId }) => findDaySheet(member, brewId),
  findBrewDay: (member, { sharedBrewId, equipmentId }) => findBrewDay(member, { sharedBrewId, equipmentId }),
  findDraft: (member, { recipeId }) => findDraft(member, recipeId),
  findEquipment: (member, { equipmentId }) => findEquipment(member, equipmentId),
  findFamily: (member, { recipeId }) => findFamily(member, recipeId),
  findIngredient: (member, { ingredientId }) => findIngredient(member, ingredientId),
  findLot: (member, { lotId }) => findLot(member, lotId),
  findLearning: (member, { equipmentId }) => findLearning(member, equipmentId, null),
  findNotice: (member, { noticeId }) => findNotice(member, noticeId),
  findOrder: (member, { orderId }) => findOrder(member, orderId),
  findOrigin: (member, { recipeId }) => findOrigin(member, recipeId),
  findPhoto: (member, { brewId, photoId }) => findPhoto(member, { brewId, id: photoId, size: "thumb" }),
  findPlanBehind: (member, { brewId }) => findPlanBehind(member, brewId),
  findReadings: (member, { brewId }) => findReadings(member, brewId, { limit: 10 }),
  findRecipe: (member, { recipeId }) => findRecipe(member, recipeId),
  findReferred: (member, { recipeId }) => findReferred(member, recipeId, { recipe: null, rev: 1 }),
  findRevision: (member, { recipeId }) => findRevision(member, recipeId, 1),
  findSharedBrew: (member, { sharedBrewId }) => findSharedBrew(member, sharedBrewId),
  findSharedBrewPlan: (member, { sharedBrewId }) => findSharedBrewPlan(member, sharedBrewId),
  findSheet: (member, { sharedBrewId, equipmentId }) => findSheet(member, { sharedBrewId, equipmentId }),
  findTrial: (member, { equipmentId, trialId }) => findTrial(member, equipmentId, trialId),
  findUses: (member) => findUses(member, sampleRecipe().hops[0]?.name ?? "", ownHop().what),
  listAcross: async (member) => (await listAcross(member, {}, { question: questionOf({}), asked: {} })).brews,
  listAdaptations: (member, ids) => listAdaptations(member, revision(ids)),
  listBrewDays,
  listBrewLots: (member, { brewId }) => listBrewLots(member, brewId),
  listBrews,
  listComparisons,
  listDue: (member) => listDue(member, onDay(12)),
  listDrafts: (member, { recipeId }) => listDrafts(member, recipeId),
  listEquipment,
  listEvidence: (member, { equipmentId }) => listEvidence(member, [equipmentId]),
  listKettlesOfKind: (member) => listKettlesOfKind(member, kettleKind(parsedEquipment().equipment), null),
  listExportReports,
  listImports,
  listIngredients,
  listInvitations,
  listKettleEntries: (member, ids) => listKettleEntries(member, revision(ids)),
  listLots,
  listMovements: (member, { lotId }) => listMovements(member, lotId),
  listNotices,
  listOffers: (member) => listOffers(member, member.userId),
  listOnHand,
  listOrderers,
  listOrders,
  listOwnBrewDays,
  listPeople,
  listPlanVersions: (member, { sharedBrewId }) => listPlanVersions(member, sharedBrewId),
  listPublications: (member, { recipeId }) => listPublications(member, recipeId),
  listRecipePage: (member) => listRecipePage(member, { sort: "title", direction: "ascending", page: 1 }),
  listRecipes,
  listRegister,
  listResults: (member, { sharedBrewId }) => listResults(member, sharedBrewId),
  listRevisions: (member, { recipeId }) => listRevisions(member, recipeId),
  listSensorKeys,
  listSharedBrews,
  listSheets: (member, { sharedBrewId }) => listSheets(member, sharedBrewId),
  listSummaries: (member) => listSummaries(member, {}),
  listTrials: (member, { equipmentId }) => listTrials(member, equipmentId),
  listWritableBrews,
};

/** Reads that are of no club, and why nothing of a club gets out by them. */
const OF_NO_CLUB: Readonly<Record<string, string>> = {
  findPublished: "What is published is for everybody.",
  findPublishedResult: "What is published is for everybody.",
  findRound: "It works within a transaction that shows one space only.",
  findSession: "By a secret that only its owner has.",
  findMailChoice: "The reader's own.",
  listLosses: "It answers with a function of the reader's own club.",
  listSpaces: "The spaces of the reader.",
  listWritableSpaces: "The spaces of the reader.",
};

/** Reads in which the test's club has nothing to be seen, so that an empty answer to its owner is no surprise. */
const NOTHING_THERE = new Set([
  ...["findOrigin", "findDraft", "listDrafts", "findBrewDay", "listBrewDays", "listOwnBrewDays"],
  ...["listBrewLots", "listAdaptations", "listOnHand", "listResults", "findPlanBehind"],
]);

/** Messages go to one person, and here to whoever brews. */
const TO_THE_BREWER = new Set(["findNotice", "listNotices"]);

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
