import { describe, expect, it } from "vitest";
import { lotChange, lotMove, type LotMove } from "@/lib/model/ingredient-lot";
import { createIngredient } from "@/lib/server/ingredients/writes";
import { lotFigures } from "@/lib/server/lots/figures";
import { moveLot } from "@/lib/server/lots/move";
import { findLot, listLots, listMovements } from "@/lib/server/lots/reads";
import { archiveLot, createLot, saveLot } from "@/lib/server/lots/writes";
import { join, newClub } from "../support/club";
import { hopLot, maltLot, ownHop } from "../support/lots";

const move = (id: string, lockVersion: number, rest: Partial<LotMove>): LotMove =>
  lotMove.parse({ id, lockVersion, kind: "counted", amount: 0, why: "", ...rest });

describe("a lot", () => {
  it("is read back as it was written, with whose it is", async () => {
    const { organiser, member, guest } = await newClub("member", "guest");
    const { id } = await createLot(member, hopLot({ owner: "me" }));
    const { owner: _owner, ...lot } = hopLot();
    const kept = { id, ...lot, unit: "g", lockVersion: 1, isArchived: false };
    const owner = { id: member.userId, name: "Some member" };
    expect(await findLot(member, id)).toEqual({ ...kept, owner, mayWrite: true });
    expect(await findLot(organiser, id)).toMatchObject({ mayWrite: true });
    expect(await listLots(guest)).toEqual([{ ...kept, owner, mayWrite: false }]);
    expect(await listMovements(guest, id)).toMatchObject([
      { version: 1, kind: "counted", change: 250, after: 250, brew: null, actorName: "Some member" },
    ]);
  });

  it("of the club is changed by every member, one of a member by them and organisers", async () => {
    const { organiser, member, judge } = await newClub("member", "judge");
    const other = await join(organiser, "member");
    const { id: ofClub } = await createLot(member, hopLot());
    expect(await moveLot(other, move(ofClub, 1, { kind: "used", amount: 10 }))).toEqual({ ok: true, lockVersion: 2 });
    const { id: own } = await createLot(member, hopLot({ owner: "me" }));
    const refused = "Only who keeps this lot or an organiser changes it.";
    await expect(moveLot(other, move(own, 1, {}))).rejects.toThrow(refused);
    await expect(archiveLot(other, { id: own, lockVersion: 1, archived: true })).rejects.toThrow(refused);
    await expect(moveLot(judge, move(ofClub, 2, {}))).rejects.toThrow(refused);
    await expect(createLot(judge, hopLot())).rejects.toMatchObject({ code: "FORBIDDEN" });
    expect(await moveLot(organiser, move(own, 1, { amount: 5 }))).toEqual({ ok: true, lockVersion: 2 });
  });

  it("has in its history everything that came and went, and on hand is what the last line says", async () => {
    const { member } = await newClub("member");
    const { id } = await createLot(member, maltLot());
    await moveLot(member, move(id, 1, { kind: "used", amount: 4.25, why: "Test mash" }));
    await moveLot(member, move(id, 2, { kind: "received", amount: 10, why: "Group order" }));
    await moveLot(member, move(id, 3, { kind: "counted", amount: 30.5, why: "Weighed" }));
    await moveLot(member, move(id, 4, { kind: "thrown away", amount: 0.5 }));
    const movements = await listMovements(member, id);
    expect(movements.map(({ version, kind, change, after, why }) => [version, kind, change, after, why])).toEqual([
      [5, "thrown away", -0.5, 30, ""],
      [4, "counted", -0.25, 30.5, "Weighed"],
      [3, "received", 10, 30.75, "Group order"],
      [2, "used", -4.25, 20.75, "Test mash"],
      [1, "counted", 25, 25, ""],
    ]);
    expect(movements.reduce((sum, { change }) => sum + change, 0)).toBeCloseTo(30, 9);
    expect(await findLot(member, id)).toMatchObject({ onHand: 30, lockVersion: 5 });
  });

  it("gives no more than there is, and holds no more than a shed", async () => {
    const { member } = await newClub("member");
    const { id } = await createLot(member, maltLot());
    await expect(moveLot(member, move(id, 1, { kind: "used", amount: 25.001 }))).rejects.toThrow(
      "Amount 25.001 kg used is more than the 25 kg on hand.",
    );
    await expect(moveLot(member, move(id, 1, { kind: "bought", amount: 100_000 }))).rejects.toThrow(
      "Amount: 100025 kg on hand is outside 0 to 100000 kg.",
    );
    expect(await listMovements(member, id)).toHaveLength(1);
  });

  it("takes one of ten simultaneous corrections and tells the others, with one line of history", async () => {
    const { organiser, member } = await newClub("member");
    const { id } = await createLot(member, hopLot());
    const outcomes = await Promise.all(
      Array.from({ length: 10 }, (_, i) => moveLot(i % 2 === 0 ? member : organiser, move(id, 1, { amount: 100 + i }))),
    );
    expect(outcomes.filter(({ ok }) => ok)).toEqual([{ ok: true, lockVersion: 2 }]);
    expect(outcomes.filter(({ ok }) => !ok)).toEqual(Array(9).fill({ ok: false, reason: "stale" }));
    const movements = await listMovements(member, id);
    expect(movements).toHaveLength(2);
    expect(await findLot(member, id)).toMatchObject({ onHand: movements[0]?.after });
  });

  it("is described anew under its version only, and keeps its kind", async () => {
    const { member } = await newClub("member");
    const { id } = await createLot(member, hopLot());
    const { owner: _owner, onHand: _onHand, ...described } = hopLot({ label: "Harvest 2025" });
    const change = lotChange.parse({ id, lockVersion: 1, ...described });
    expect(await saveLot(member, change)).toEqual({ ok: true, lockVersion: 2 });
    expect(await saveLot(member, change)).toEqual({ ok: false, reason: "stale" });
    expect(await findLot(member, id)).toMatchObject({ label: "Harvest 2025", onHand: 250 });
    const malt = lotChange.parse({ id, lockVersion: 2, ...described, what: maltLot().what });
    await expect(saveLot(member, malt)).rejects.toThrow("This lot is of a hop and stays so.");
  });
});

describe("the figures that a lot gives a recipe", () => {
  const fresh = { alpha: 0.06, analysedOn: "2024-01-01", storedAt: 20, packaging: "loose" };

  it("have the alpha acids that storage has left, by what the variety loses", async () => {
    const { member } = await newClub("member");
    const what = { kind: "hop", figures: fresh };
    const { id } = await createLot(member, hopLot({ what }));
    const { id: unknown } = await createLot(member, hopLot({ what, name: "Garden hop" }));
    const before = await lotFigures(member, [id, unknown]);
    // More than a year in the open at 20 °C: less than a quarter of Cascade's is left, by half in each six months.
    const alpha = (figures: Awaited<ReturnType<typeof lotFigures>>, lot: string): number | null => {
      const found = figures.get(lot);
      return found?.kind === "hop" ? found.figures.alpha : null;
    };
    expect(alpha(before, id)).toBeLessThan(0.06 / 4);
    expect(alpha(before, unknown)).toBe(0.06);
    await createIngredient(member, ownHop());
    expect(alpha(await lotFigures(member, [unknown]), unknown)).toBeLessThan(0.06 / 2);
  });

  it("are there for every kind of lot, and left out for one that is put away", async () => {
    const { member } = await newClub("member");
    const { id } = await createLot(member, hopLot());
    const { id: salt } = await createLot(member, hopLot({ name: "Gypsum", what: { kind: "salt", figures: {} } }));
    expect(new Set((await lotFigures(member, [id, salt])).keys())).toEqual(new Set([id, salt]));
    await archiveLot(member, { id, lockVersion: 1, archived: true });
    expect([...(await lotFigures(member, [id, salt])).keys()]).toEqual([salt]);
  });
});
