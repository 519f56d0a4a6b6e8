import { randomUUID } from "node:crypto";
import { sampleReading } from "../support/sample-reading";
import { formOf, SEEN, valueOf, type ActionRow } from "./action-row";

const PLAN = {
  ...{
    "window.from": "",
    "window.to": "",
    "rules.yeast.lot": "",
    "rules.water": "as written",
    "rules.words": "Never held",
  },
} as const;
const PART = {
  ...{ "brewDay.day": "", "brewDay.time": "", "brewDay.zone": "", yeast: "" },
  ...{ "water.calcium": "", "water.magnesium": "", "water.sodium": "" },
  ...{ "water.sulfate": "", "water.chloride": "", "water.bicarbonate": "" },
} as const;

/** A note in the log, as a phone sends it. */
const noteOf = (brewId: string | undefined) => ({
  ...{ id: randomUUID(), brewId, deviceId: randomUUID(), deviceSeq: 1, occurredAt: "2026-03-14T11:05:00Z" },
  ...{ kind: "note", text: "Never noted", step: null },
});

/** Brews, their logs, and what clubs brew together. */
export const BREW_ACTIONS: Readonly<Record<string, ActionRow>> = {
  recordReadingAction: valueOf("brew", ({ brew = "" }) => sampleReading(brew)),
  moveBrewAction: valueOf("brew", ({ brew }) => ({ id: brew, state: "on the kettle", lockVersion: 1 })),
  dropBrewAction: formOf(
    "brew",
    () => ({ ...SEEN, why: "Never dropped" }),
    ({ space, brew }) => [space, brew],
  ),
  logAction: valueOf(
    "brew",
    ({ brew }) => ({ events: [noteOf(brew)] }),
    ({ space, brew }) => [space, brew],
  ),
  giveBackLotsAction: formOf("brew", ({ brew }) => ({ brewId: brew })),

  createSharedBrewAction: formOf("organise", ({ recipe = "" }) => ({
    recipe: `${recipe}/1`,
    title: "Never called",
    ...PLAN,
  })),
  changePlanAction: formOf("organise", ({ sharedBrew }) => ({
    id: sharedBrew,
    baseVersion: "1",
    rev: "1",
    state: "open",
    note: "Never changed",
    ...PLAN,
  })),
  markPlanSeenAction: formOf("be here", ({ sharedBrew }) => ({ id: sharedBrew, version: "1" })),
  joinAction: formOf("brew", ({ sharedBrew, sharedKettle }) => ({
    ...{ sharedBrewId: sharedBrew, equipmentId: sharedKettle, planVersion: "1" },
    ...PART,
  })),
  changePartAction: formOf("brew", ({ sharedBrew, sharedKettle }) => ({
    ...{ ...SEEN, sharedBrewId: sharedBrew, equipmentId: sharedKettle },
    ...PART,
  })),
  leaveAction: formOf("brew", ({ sharedBrew, sharedKettle }) => ({
    ...SEEN,
    ...{ sharedBrewId: sharedBrew, equipmentId: sharedKettle },
  })),
  takeWayAction: formOf("brew", ({ sharedBrew, sharedKettle }) => ({
    ...{ sharedBrewId: sharedBrew, equipmentId: sharedKettle, way: "" },
  })),
  planSheetAction: formOf("brew", ({ sharedBrew, sharedKettle }) => ({
    ...{ sharedBrewId: sharedBrew, equipmentId: sharedKettle },
  })),
};
