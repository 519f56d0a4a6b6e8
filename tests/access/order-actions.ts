import { form, formOf, SEEN, type ActionRow, type Ids } from "./action-row";

const ofOrder = ({ space, order }: Ids): readonly unknown[] => [space, order];
const ofItem = ({ space, order, item }: Ids): readonly unknown[] => [space, order, item];
const AMOUNT = { measure: "kg", amount: "1" } as const;
const PACK = { size: "25", measure: "kg", price: "30", note: "", currency: "EUR" } as const;

export const ORDER_ACTIONS: Readonly<Record<string, ActionRow>> = {
  createOrderAction: form("organise", () => ({
    ...{ title: "Never ordered", sharedBrewId: "", currency: "EUR", closesAt: "", note: "" },
  })),
  moveOrderAction: formOf("organise", () => ({ ...SEEN, state: "locked", fingerprint: "" }), ofOrder),
  changeOrderAction: formOf("organise", () => ({ ...SEEN, title: "Never changed", closesAt: "", note: "" }), ofOrder),
  addThingAction: formOf("order", () => ({ what: "other/pcs", name: "Never added", amount: "1" }), ofOrder),
  decideSubstitutionAction: formOf("order", ({ record }) => ({ ...SEEN, id: record, state: "agreed" }), ofOrder),
  saveWantAction: formOf("order", () => ({ ...AMOUNT, ...SEEN }), ofItem),
  askLateAction: formOf("order", () => ({ ...AMOUNT, ...SEEN }), ofItem),
  saveItemAction: formOf("organise", () => ({ ...SEEN, leftOverTo: "", cellsPerPiece: "" }), ofItem),
  proposeSubstitutionAction: formOf(
    "organise",
    ({ record, spare }) => ({ userId: record, toItemId: spare, ratio: "1" }),
    ofItem,
  ),
  addOfferAction: formOf("organise", () => PACK, ofItem),
  saveOfferAction: formOf("organise", ({ record }) => ({ ...PACK, ...SEEN, offerId: record }), ofItem),
  removeOfferAction: formOf("organise", ({ record }) => ({ ...SEEN, offerId: record }), ofItem),
  receiveItemAction: formOf(
    "organise",
    () => ({ ...SEEN, measure: "kg", currency: "EUR", received: "25", paid: "", sharing: "proportion" }),
    ofItem,
  ),
  letLateAction: formOf("organise", ({ record }) => ({ userId: record, reason: "Never let" }), ofOrder),
  decideLateAction: formOf(
    "organise",
    ({ record }) => ({ ...SEEN, id: record, state: "declined", fingerprint: "" }),
    ofOrder,
  ),
  handOutAction: formOf(
    "organise",
    ({ record, item }) => ({ ...AMOUNT, ...SEEN, itemId: item, userId: record }),
    ofOrder,
  ),
  stockShareAction: formOf("order", ({ item }) => ({ ...SEEN, itemId: item }), ofOrder),
};
