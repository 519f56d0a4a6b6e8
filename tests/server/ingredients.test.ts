import { describe, expect, it } from "vitest";
import { ingredientChange } from "@/lib/model/ingredient";
import { findIngredient, listIngredients } from "@/lib/server/ingredients/reads";
import { archiveIngredient, createIngredient, saveIngredient } from "@/lib/server/ingredients/writes";
import { join, newClub } from "../support/club";
import { ownHop } from "../support/lots";

const change = (id: string, lockVersion: number, rest: object = {}) =>
  ingredientChange.parse({ id, lockVersion, ...ownHop(), ...rest });

describe("a club's own ingredient", () => {
  it("is read back as it was written, by everybody in the club", async () => {
    const { member, guest } = await newClub("member", "guest");
    const { id } = await createIngredient(member, ownHop());
    const kept = { id, ...ownHop(), lockVersion: 1, isArchived: false, createdByName: "Some member" };
    expect(await findIngredient(member, id)).toEqual({ ...kept, mayWrite: true });
    expect(await listIngredients(guest)).toEqual([{ ...kept, mayWrite: false }]);
  });

  it("is written by members and organisers only", async () => {
    const { member, judge } = await newClub("member", "judge");
    await expect(createIngredient(judge, ownHop())).rejects.toMatchObject({ code: "FORBIDDEN" });
    const { id } = await createIngredient(member, ownHop());
    expect(() => saveIngredient(judge, change(id, 1))).toThrow("Only members and organisers write recipes here.");
  });

  it("has its name once among its kind, whatever the letters, until it is put away", async () => {
    const { member } = await newClub("member");
    const { id } = await createIngredient(member, ownHop());
    await expect(createIngredient(member, ownHop({ name: "GARDEN HOP" }))).rejects.toThrow(
      "The club has an ingredient called GARDEN HOP already.",
    );
    await createIngredient(member, ownHop({ what: { kind: "salt", figures: { salt: "gypsum" } } }));
    await archiveIngredient(member, { id, lockVersion: 1, archived: true });
    await createIngredient(member, ownHop());
    await expect(archiveIngredient(member, { id, lockVersion: 2, archived: false })).rejects.toThrow(
      "The club has an ingredient of this name already.",
    );
    expect(await findIngredient(member, id)).toMatchObject({ isArchived: true, lockVersion: 2 });
  });

  it("lets one of ten simultaneous changes through and tells the others", async () => {
    const { organiser, member } = await newClub("member");
    const other = await join(organiser, "member");
    const { id } = await createIngredient(member, ownHop());
    const outcomes = await Promise.all(
      Array.from({ length: 10 }, (_, i) =>
        saveIngredient(i % 2 === 0 ? member : other, change(id, 1, { notes: `note ${String(i)}` })),
      ),
    );
    expect(outcomes.filter(({ ok }) => ok)).toEqual([{ ok: true, lockVersion: 2 }]);
    expect(outcomes.filter(({ ok }) => !ok)).toHaveLength(9);
    const won = outcomes.findIndex(({ ok }) => ok);
    expect(await findIngredient(member, id)).toMatchObject({ notes: `note ${String(won)}`, lockVersion: 2 });
  });

  it("stays of its kind", async () => {
    const { member } = await newClub("member");
    const { id } = await createIngredient(member, ownHop());
    const salt = { what: { kind: "salt", figures: { salt: "gypsum" } } };
    await expect(saveIngredient(member, change(id, 1, salt))).rejects.toThrow(
      "This ingredient is a hop and stays one.",
    );
  });
});
