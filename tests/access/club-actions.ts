import { randomUUID } from "node:crypto";
import { sampleEquipment } from "../support/sample-recipe";
import { form, formOf, SEEN, unbound, valueOf, type ActionRow } from "./action-row";

const TOKEN = "a".repeat(43);
const PASSWORD = "a passphrase of nobody";

const CRYSTAL_SALT = { name: "Never kept", notes: "", salt: "gypsum" } as const;
const LOT = {
  ...{ name: "Never kept", label: "Jar", notes: "", bestBefore: "" },
  ...{ price: "", currency: "EUR", priceFor: "" },
} as const;

/** Accounts, clubs, people, equipment and stock. */
export const CLUB_ACTIONS: Readonly<Record<string, ActionRow>> = {
  savePreferencesAction: form(
    "be signed in",
    () => ({ units: "metric", gravity: "sg", colour: "ebc", theme: "light" }),
    unbound,
  ),
  saveMailChoiceAction: form("be signed in", () => ({}), unbound),
  changePasswordAction: form("be signed in", () => ({ current: PASSWORD, replacement: `${PASSWORD} 2` }), unbound),
  signOutEverywhereAction: form("be signed in", () => ({}), unbound),
  closeAccountAction: form("be signed in", () => ({ password: PASSWORD, words: "close my account" }), unbound),
  foundClubAction: form("be signed in", () => ({ name: "Never founded", slug: "never-founded" }), unbound),
  joinAsViewerAction: form("be signed in", () => ({ token: TOKEN }), unbound),
  joinAsNewcomerAction: form(
    "come",
    () => ({ token: TOKEN, email: "never@joined.example", displayName: "Never Joined", password: PASSWORD }),
    unbound,
  ),

  createInvitationAction: form("organise", () => ({ role: "member", email: "", maxUses: "1", days: "7" })),
  revokeInvitationAction: formOf("organise", ({ record }) => ({ id: record })),
  makeOrganiserAction: formOf("organise", ({ record }) => ({ person: record })),
  makeCalendarAction: form("be here", () => ({})),
  revokeCalendarAction: form("be here", () => ({})),
  makeKeyAction: form("brew", () => ({ name: "Never made", brewId: "", days: "30" })),
  revokeKeyAction: formOf("be here", ({ record }) => ({ id: record })),
  markReadAction: formOf("be here", ({ record }) => ({ ids: record })),
  saveComparisonAction: form("brew", () => ({
    ...{ id: randomUUID(), name: "Never kept", quantity: "fermenter.originalExtract", as: "measured", group: "brewer" },
    ...{ recipe: "", sharedBrew: "", brewer: "", state: "", from: "", to: "" },
  })),
  renameComparisonAction: formOf("brew", ({ comparison }) => ({ ...SEEN, id: comparison, name: "Never renamed" })),
  deleteComparisonAction: formOf("brew", ({ comparison }) => ({ ...SEEN, id: comparison })),

  createEquipmentAction: {
    ...valueOf(
      "keep equipment",
      ({ space }) => ({
        space,
        answers: {
          ...{
            name: "Never built",
            kind: "electric with basket",
            capacity: 30,
            power: 2400,
            voltage: 230,
            usualBatch: 20,
            altitude: 100,
          },
        },
      }),
      unbound,
    ),
    named: false,
  },
  saveEquipmentAction: valueOf(
    "keep equipment",
    ({ space, equipment }) => ({ space, id: equipment, baseRev: 1, equipment: sampleEquipment() }),
    unbound,
  ),
  beginTrialAction: formOf(
    "keep equipment",
    () => ({}),
    ({ space, equipment }) => [space, equipment],
  ),
  acceptFiguresAction: valueOf(
    "keep equipment",
    ({ trial }) => ({ trialId: trial, baseRev: 1, accepted: [{ figure: "kettle.heatShare", value: 0.9 }] }),
    ({ space, equipment }) => [space, equipment],
  ),
  acceptLearnedAction: valueOf(
    "keep equipment",
    () => ({ baseRev: 1, since: null, accepted: [{ figure: "kettle.heatShare", value: 0.9 }] }),
    ({ space, equipment }) => [space, equipment],
  ),
  giveKettleAction: formOf(
    "keep equipment",
    () => ({ isGiven: "yes" }),
    ({ space, equipment }) => [space, equipment],
  ),

  createIngredientAction: form(
    "write recipes",
    () => CRYSTAL_SALT,
    ({ space }) => [space, "salt"],
  ),
  saveIngredientAction: formOf(
    "write recipes",
    ({ ingredient }) => ({ ...CRYSTAL_SALT, ...SEEN, id: ingredient }),
    ({ space }) => [space, "salt"],
  ),
  archiveIngredientAction: formOf("write recipes", ({ ingredient }) => ({ ...SEEN, id: ingredient, archived: "yes" })),
  createLotAction: form(
    "brew",
    () => ({ ...LOT, owner: "club", onHand: "1" }),
    ({ space }) => [space, "salt"],
  ),
  saveLotAction: formOf(
    "brew",
    ({ lot }) => ({ ...LOT, ...SEEN, id: lot }),
    ({ space }) => [space, "salt"],
  ),
  moveLotAction: formOf(
    "brew",
    ({ lot }) => ({ ...SEEN, id: lot, kind: "counted", amount: "1", why: "" }),
    ({ space }) => [space, "salt"],
  ),
  archiveLotAction: formOf("brew", ({ lot }) => ({ ...SEEN, id: lot, archived: "yes" })),
};
