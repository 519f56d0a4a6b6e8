import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { copyOfPublication, newPublication } from "@/lib/model/publication";
import { directory, inSpace } from "@/lib/server/db";
import { copyPublished } from "@/lib/server/publications/copy";
import { findPublished, listPublications } from "@/lib/server/publications/reads";
import { publishRecipe, withdrawRecipe } from "@/lib/server/publications/writes";
import { findOrigin } from "@/lib/server/recipes/origin";
import { findRecipe } from "@/lib/server/recipes/reads";
import { createRecipe, saveRevision } from "@/lib/server/recipes/writes";
import { parsedRecipe } from "../support/brewing";
import { newClub } from "../support/club";

const order = (recipeId: string, change: object = {}) => newPublication.parse({ recipeId, rev: 1, ...change });

describe("a published revision", () => {
  it("is read by everybody at its address, without ids, addresses and names that nobody put there", async () => {
    const { organiser, member } = await newClub("member");
    const { id } = await createRecipe(member, parsedRecipe("Märzen 2026!"));
    const { address } = await publishRecipe(organiser, order(id));
    expect(address).toMatch(/^marzen-2026-[a-z0-9]{8}$/);
    const published = await findPublished(address);
    expect(published).toMatchObject({ title: "Märzen 2026!", rev: 1, authorName: "a member of Test club" });
    expect(published?.content.recipe).toEqual((await findRecipe(organiser, id))?.content.recipe);
    const seen = JSON.stringify(published);
    const secrets = [id, organiser.userId, member.userId, organiser.spaceId, organiser.spaceSlug, "Some member"];
    for (const secret of [...secrets, "Olga", "Test kettle", "@example.org"]) expect(seen).not.toContain(secret);
  });

  it("has its author's name where the author published it with the name, and not by anybody else's act", async () => {
    const { organiser, member } = await newClub("member");
    const { id: own } = await createRecipe(organiser, parsedRecipe("Own ale"));
    const { id: other } = await createRecipe(member, parsedRecipe("Other ale"));
    const { address } = await publishRecipe(organiser, order(own, { named: "yes" }));
    expect(await findPublished(address)).toMatchObject({ authorName: "Olga Organiser" });
    await expect(publishRecipe(organiser, order(other, { named: "yes" }))).rejects.toMatchObject({ code: "FORBIDDEN" });
    expect(await listPublications(organiser, other)).toEqual([]);
  });

  it("is decided by organisers, of their own club's recipes", async () => {
    const club = await newClub("member", "judge");
    const { organiser: stranger } = await newClub();
    const { id } = await createRecipe(club.member, parsedRecipe());
    for (const reader of [club.member, club.judge]) {
      await expect(publishRecipe(reader, order(id))).rejects.toMatchObject({ code: "FORBIDDEN" });
    }
    await expect(publishRecipe(stranger, order(id))).rejects.toMatchObject({ code: "NOT_FOUND" });
    await expect(publishRecipe(club.organiser, order(id, { rev: 2 }))).rejects.toMatchObject({ code: "NOT_FOUND" });
    expect(await listPublications(club.organiser, id)).toEqual([]);
  });

  it("has one address, however many publish it at once, and keeps it when it comes back", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const made = await Promise.all(Array.from({ length: 6 }, () => publishRecipe(organiser, order(id))));
    expect(new Set(made.map(({ address }) => address)).size).toBe(1);
    const [{ address } = { address: "" }] = made;
    await withdrawRecipe(organiser, address);
    expect(await publishRecipe(organiser, order(id))).toEqual({ address });
    expect(await findPublished(address)).not.toBeNull();
  });

  it("leads to a later one that is published too, and stays what it is", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const first = await publishRecipe(organiser, order(id));
    const { content } = parsedRecipe();
    await saveRevision(organiser, {
      id,
      baseRev: 1,
      title: "Newer",
      message: "",
      content: { ...content, notes: "more" },
    });
    expect(await findPublished(first.address)).toMatchObject({ newerAddress: null, content: { notes: "" } });
    const second = await publishRecipe(organiser, order(id, { rev: 2 }));
    expect(await findPublished(first.address)).toMatchObject({ newerAddress: second.address, content: { notes: "" } });
  });
});

describe("a withdrawn revision", () => {
  it("is gone for everybody, also where it was kept", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const { address } = await publishRecipe(organiser, order(id));
    await withdrawRecipe(organiser, address);
    expect(await findPublished(address)).toBeNull();
    const nobody = randomUUID();
    const [row] = await inSpace(nobody, nobody, (tx) => tx.publicRecipe.findMany({ where: { address } }));
    expect(row).toMatchObject({ content: {}, credits: [], authorName: "" });
    await expect(withdrawRecipe(organiser, address)).rejects.toMatchObject({ code: "NOT_FOUND" });
    const noted = await directory.auditLog.findMany({ where: { target: address }, orderBy: { id: "asc" } });
    expect(noted.map(({ action }) => action)).toEqual(["publish", "withdraw"]);
  });

  it("is withdrawn by its own organisers only", async () => {
    const { organiser, member } = await newClub("member");
    const { organiser: stranger } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const { address } = await publishRecipe(organiser, order(id));
    await expect(withdrawRecipe(stranger, address)).rejects.toMatchObject({ code: "NOT_FOUND" });
    await expect(withdrawRecipe(member, address)).rejects.toMatchObject({ code: "FORBIDDEN" });
    expect(await findPublished(address)).not.toBeNull();
  });
});

describe("a copy of what is public", () => {
  it("credits what the page shows, and leads to nothing that the copier may not see", async () => {
    const { organiser } = await newClub();
    const { organiser: reader } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe("Old ale"));
    const { address } = await publishRecipe(organiser, order(id));
    const copy = copyOfPublication.parse({ id: randomUUID(), address, title: "Ours" });
    const { id: copied } = await copyPublished(reader, copy);
    expect(await findRecipe(reader, copied)).toMatchObject({ title: "Ours" });
    expect(await findOrigin(reader, copied)).toEqual({
      credits: [{ title: "Old ale", author: "a member of Test club" }],
      link: null,
      rev: null,
    });
    await withdrawRecipe(organiser, address);
    const late = copyOfPublication.parse({ id: randomUUID(), address, title: "Late" });
    await expect(copyPublished(reader, late)).rejects.toMatchObject({ code: "NOT_FOUND" });
  });
});
