import { listAdaptations } from "@/lib/server/adaptations/reads";
import { findDaySheet } from "@/lib/server/brews/day-sheet";
import { findBrew, listBrews } from "@/lib/server/brews/reads";
import { listRegister } from "@/lib/server/brews/register";
import { listDue } from "@/lib/server/cellar/due";
import { findBrewDay, listBrewDays } from "@/lib/server/calendar/brew-days";
import { findComparison, listComparisons } from "@/lib/server/comparisons/reads";
import { findDraft, listDrafts } from "@/lib/server/drafts/reads";
import { findEquipment, listEquipment } from "@/lib/server/equipment/reads";
import { listExportReports } from "@/lib/server/exchange/export-reports";
import { listImports } from "@/lib/server/exchange/imports";
import { findIngredient, listIngredients } from "@/lib/server/ingredients/reads";
import { findUses } from "@/lib/server/ingredients/uses";
import { listInvitations } from "@/lib/server/invitations/reads";
import { listKettleEntries } from "@/lib/server/kettles/entries";
import { listBrewLots } from "@/lib/server/lots/brew-lots";
import { listOffers } from "@/lib/server/lots/offers";
import { findLot, listLots, listMovements } from "@/lib/server/lots/reads";
import { findNotice, listNotices } from "@/lib/server/notices/reads";
import { listOnHand } from "@/lib/server/orders/on-hand";
import { listOrderers } from "@/lib/server/orders/people";
import { findOrder, listOrders } from "@/lib/server/orders/reads";
import { findPhoto } from "@/lib/server/photos/reads";
import { listPublications } from "@/lib/server/publications/reads";
import { listResults } from "@/lib/server/publications/result-reads";
import { findFamily } from "@/lib/server/recipes/family";
import { listRecipePage, listRecipes } from "@/lib/server/recipes/list";
import { listRevisions } from "@/lib/server/recipes/list-revisions";
import { findOrigin } from "@/lib/server/recipes/origin";
import { findRecipe, findRevision } from "@/lib/server/recipes/reads";
import { findReferred } from "@/lib/server/recipes/referred";
import { findReadings } from "@/lib/server/sensors/read-back";
import { listSensorKeys } from "@/lib/server/sensors/tokens";
import { listWritableBrews } from "@/lib/server/sensors/writable-brews";
import type { Member } from "@/lib/server/session";
import { findSheet } from "@/lib/server/shared-brews/find-sheet";
import { listOwnBrewDays } from "@/lib/server/shared-brews/own-days";
import { findPlanBehind } from "@/lib/server/shared-brews/plan-behind";
import { findSharedBrew, findSharedBrewPlan, listPlanVersions, listSharedBrews } from "@/lib/server/shared-brews/reads";
import { listSheets } from "@/lib/server/shared-brews/sheets";
import { listPeople } from "@/lib/server/spaces/reads";
import { listAcross } from "@/lib/server/summaries/across";
import { listSummaries } from "@/lib/server/summaries/reads";
import { parsedEquipment, type Brewing } from "./brewing";
import { onDay } from "./cellar";
import { listEvidence } from "@/lib/server/learning/evidence";
import { listKettlesOfKind } from "@/lib/server/learning/kettles";
import { findIsGiven, findKettlesElsewhere } from "@/lib/server/learning/contributions";
import { findLearning } from "@/lib/server/learning/learned";
import { kettleKind } from "@/lib/model/learning/kettle-kind";
import { questionOf } from "@/lib/model/summary/question";
import { listPourable } from "@/lib/server/tastings/candidates";
import { findPourList } from "@/lib/server/tastings/pour-list";
import { findPreparation } from "@/lib/server/tastings/preparation";
import { findTasting, listTastings } from "@/lib/server/tastings/reads";
import { listJudgedFlights } from "@/lib/server/tastings/results-history";
import { listTastingsOfBrew } from "@/lib/server/tastings/results-of-brew";
import { findTastingFacts } from "@/lib/server/tastings/results-read";
import { findPaperOf } from "@/lib/server/tastings/sheets-paper";
import { findSheetProgress } from "@/lib/server/tastings/sheets-progress";
import { findJudged, findJudgeSheet } from "@/lib/server/tastings/sheets-read";
import { findTrial, listTrials } from "@/lib/server/trials/reads";
import { ownHop } from "./lots";
import { sampleRecipe } from "./sample-recipe";
import { listBrewPage } from "@/lib/server/summaries/page";

/** What a club has that a read asks for. */
export interface Ids extends Brewing {
  readonly lotId: string;
  readonly ingredientId: string;
  readonly orderId: string;
  readonly noticeId: string;
  readonly photoId: string;
  readonly trialId: string;
  readonly comparisonId: string;
  /** Prepared by the owner, judged by the brewer. */
  readonly tastingId: string;
}
type Read = (member: Member, ids: Ids) => Promise<unknown>;

const revision = ({ recipeId }: Ids) => ({ recipeId, rev: 1 });

/** Every read of the services, asked with identifiers of a club. */
export const READS: Readonly<Record<string, Read>> = {
  findBrew: (member, { brewId }) => findBrew(member, brewId),
  findComparison: (member, { comparisonId }) => findComparison(member, comparisonId),
  findDaySheet: (member, { brewId }) => findDaySheet(member, brewId),
  findBrewDay: (member, { sharedBrewId, equipmentId }) => findBrewDay(member, { sharedBrewId, equipmentId }),
  findDraft: (member, { recipeId }) => findDraft(member, recipeId),
  findEquipment: (member, { equipmentId }) => findEquipment(member, equipmentId),
  findFamily: (member, { recipeId }) => findFamily(member, recipeId),
  findIngredient: (member, { ingredientId }) => findIngredient(member, ingredientId),
  findLot: (member, { lotId }) => findLot(member, lotId),
  findIsGiven: (member, { equipmentId }) => findIsGiven(member, equipmentId),
  findKettlesElsewhere: (member) => findKettlesElsewhere(member, kettleKind(parsedEquipment().equipment)),
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
  findTasting: (member, { tastingId }) => findTasting(member, tastingId),
  findPreparation: (member, { tastingId }) => findPreparation(member, tastingId),
  findPourList: (member, { tastingId }) => findPourList(member, tastingId),
  findJudgeSheet: (member, { tastingId }) => findJudgeSheet(member, tastingId),
  findJudged: (member, { tastingId }) => findJudged(member, tastingId, member.userId),
  findTastingFacts: (member, { tastingId }) => findTastingFacts(member, tastingId),
  findSheetProgress: (member, { tastingId }) => findSheetProgress(member, tastingId),
  findPaperOf: (member, { tastingId }) => findPaperOf(member, tastingId, member.userId),
  findTrial: (member, { equipmentId, trialId }) => findTrial(member, equipmentId, trialId),
  findUses: (member) => findUses(member, sampleRecipe().hops[0]?.name ?? "", ownHop().what),
  listAcross: async (member) => (await listAcross(member, {}, { question: questionOf({}), asked: {} })).brews,
  listAdaptations: (member, ids) => listAdaptations(member, revision(ids)),
  listBrewDays,
  listBrewPage: async (member) => (await listBrewPage(member, { limit: 10 }, null)).brews,
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
  listJudgedFlights,
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
  listPourable,
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
  listTastings,
  listTastingsOfBrew: (member, { brewId }) => listTastingsOfBrew(member, brewId),
  listTrials: (member, { equipmentId }) => listTrials(member, equipmentId),
  listWritableBrews,
};

/** Reads that are of no club, and why nothing of a club gets out by them. */
export const OF_NO_CLUB: Readonly<Record<string, string>> = {
  listClosingClubs: "It tells somebody of the clubs that they are in themselves.",
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
export const NOTHING_THERE = new Set([
  ...["findOrigin", "findDraft", "listDrafts", "findBrewDay", "listBrewDays", "listOwnBrewDays"],
  ...["listBrewLots", "listAdaptations", "listOnHand", "listResults", "findPlanBehind"],
  // Nothing was revealed, and whoever owns the club is the steward and judges nothing.
  ...["findTastingFacts", "listJudgedFlights", "findPaperOf", "listTastingsOfBrew"],
]);

/** Messages go to one person, and here to whoever brews; who judges the tasting is the brewer too. */
export const TO_THE_BREWER = new Set(["findNotice", "listNotices", "findJudgeSheet", "findJudged"]);
