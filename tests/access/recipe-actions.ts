import { randomUUID } from "node:crypto";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { sampleContent } from "../support/sample-recipe";
import { form, formOf, SEEN, unbound, valueOf, type ActionRow } from "./action-row";

const TITLE = "Never written";
const written = () => ({ title: TITLE, message: "", content: sampleContent() });

const NO_ROWS = { steps: [], mashGrist: [], kettleGrist: [], boilHops: [], standHops: [], dryHops: [] };
const draft = () => ({
  ...{ fields: {}, rows: NO_ROWS, kettle: "", note: "" },
  ...{ writer: randomUUID(), preferences: DEFAULT_PREFERENCES },
});

/** Recipes, drafts, what was published of them, and what is chosen for kettles. */
export const RECIPE_ACTIONS: Readonly<Record<string, ActionRow>> = {
  createRecipeAction: {
    ...valueOf("write recipes", ({ space }) => ({ space, draftId: randomUUID(), ...written() }), unbound),
    named: false,
  },
  saveRevisionAction: valueOf(
    "write recipes",
    ({ space, recipe }) => ({ space, id: recipe, baseRev: 1, ...written() }),
    unbound,
  ),
  keepMineAction: valueOf(
    "write recipes",
    ({ space, recipe }) => ({ space, id: recipe, baseRev: 1, ...written() }),
    unbound,
  ),
  saveDraftAction: valueOf(
    "write recipes",
    ({ space, recipe }) => ({ space, id: recipe, baseRev: 1, lockVersion: 0, title: TITLE, kept: draft() }),
    unbound,
  ),
  discardDraftAction: valueOf("write recipes", ({ space, record }) => ({ space, id: record }), unbound),
  copyRecipeAction: formOf("write recipes", ({ space, recipe }) => ({
    ...{ id: randomUUID(), recipeId: recipe, rev: "1", title: TITLE, into: space },
  })),
  copyPublishedAction: form(
    "write recipes",
    ({ space, address }) => ({ id: randomUUID(), address, title: TITLE, into: space }),
    unbound,
  ),
  withdrawImportAction: formOf("write recipes", ({ record }) => ({ id: record })),
  publishAction: formOf("organise", ({ recipe }) => ({ recipeId: recipe, rev: "1" })),
  withdrawAction: formOf(
    "organise",
    ({ address }) => ({ address }),
    ({ space, recipe }) => [space, recipe],
  ),
  publishResultAction: formOf("organise", ({ sharedBrew }) => ({ id: randomUUID(), sharedBrewId: sharedBrew })),
  withdrawResultAction: formOf(
    "organise",
    ({ result }) => ({ address: result }),
    ({ space, sharedBrew }) => [space, sharedBrew],
  ),
  chooseWayAction: formOf(
    "brew",
    ({ space, recipe, equipment }) => ({
      ...{ space, recipeId: recipe, rev: "1", equipmentId: equipment, lockVersion: "0", volume: "written", way: "" },
    }),
    unbound,
  ),
  chooseLotsAction: formOf("brew", ({ recipe, equipment }) => ({
    ...{ ...SEEN, recipeId: recipe, rev: "1", equipmentId: equipment, volume: "written", way: "" },
  })),
  planBrewAction: formOf(
    "brew",
    ({ space, recipe, equipment }) => ({
      space,
      recipeId: recipe,
      equipmentId: equipment,
      rev: "1",
      volume: "usual",
      way: "",
    }),
    unbound,
  ),
};
