import { SHEET_PARTS } from "@/lib/model/tasting/sheet";
import { noteField, pointsField } from "@/lib/model/tasting/sheet-paper";
import { form, formOf, SEEN, type ActionRow, type Ids } from "./action-row";

const ofTasting = ({ space, tasting }: Ids): readonly unknown[] => [space, tasting];
const at = ({ space, tasting }: Ids): readonly unknown[] => [{ space, id: tasting }];
const CHOSEN = { ...SEEN, flightNo: "1" } as const;
const SURE = { sure: "yes" } as const;

/** A sheet of nothing but points. */
function paperSheetOf(judgeId: string | undefined, entryNo: string | undefined): Readonly<Record<string, unknown>> {
  const points = Object.fromEntries(SHEET_PARTS.map((part) => [pointsField(part), "1"]));
  const notes = Object.fromEntries(SHEET_PARTS.map((part) => [noteField(part), ""]));
  return { judgeId, flightNo: "1", entryNo, ...points, ...notes };
}

export const TASTING_ACTIONS: Readonly<Record<string, ActionRow>> = {
  createTastingAction: form("prepare tastings", ({ record }) => ({
    ...{ title: "Never held", heldOn: "", stewardId: record, sharedBrewId: "", note: "" },
  })),
  closeTastingAction: formOf("prepare tastings", () => SURE, ofTasting),
  revealTastingAction: formOf("prepare tastings", () => SURE, ofTasting),
  remindJudgesAction: formOf("prepare tastings", () => ({}), ofTasting),
  enterSheetAction: formOf("prepare tastings", ({ record, entry }) => paperSheetOf(record, entry), ofTasting),
  enterChoiceAction: formOf(
    "prepare tastings",
    ({ record, entry }) => ({ judgeId: record, flightNo: "1", glassNo: entry, note: "" }),
    ofTasting,
  ),
  changeTastingAction: formOf("prepare tastings", () => ({ ...SEEN, title: "Never", heldOn: "", note: "" }), ofTasting),
  addFlightAction: formOf(
    "prepare tastings",
    () => ({ ...SEEN, flightTitle: "Never", kind: "scored", palateLimit: "" }),
    ofTasting,
  ),
  openTastingAction: formOf("prepare tastings", () => SEEN, ofTasting),
  discardTastingAction: formOf("prepare tastings", () => SEEN, ofTasting),
  placeEntryAction: formOf("prepare tastings", ({ entry }) => ({ ...CHOSEN, entryNo: entry, styleCode: "" }), at),
  removeEntryAction: formOf(
    "prepare tastings",
    ({ entry }) => ({ ...SEEN, entryNo: entry }),
    (ids) => [...at(ids), 1],
  ),
  enterBrewsAction: formOf("prepare tastings", ({ brew = "" }) => ({ ...CHOSEN, [`brew.${brew}`]: "on" }), at),
  enterBeerAction: formOf(
    "prepare tastings",
    () => ({
      ...{ ...CHOSEN, beerName: "Never poured", brewerName: "" },
      ...{ originalGravity: "", finalGravity: "", alcohol: "", bitterness: "", colour: "" },
    }),
    at,
  ),
  setPanelAction: formOf("prepare tastings", ({ person = "" }) => ({ ...CHOSEN, [`part.${person}`]: "judge" }), at),
  changeFlightAction: formOf("prepare tastings", () => ({ ...CHOSEN, title: "Never", palateLimit: "" }), at),
  redrawOrdersAction: formOf("prepare tastings", () => SEEN, at),
  removeFlightAction: formOf("prepare tastings", () => CHOSEN, at),
};
