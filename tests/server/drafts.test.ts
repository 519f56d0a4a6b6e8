import { randomUUID } from "node:crypto";
import { describe, expect, it, vi } from "vitest";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { draftChange, type DraftChange } from "@/lib/model/recipe-draft";
import { findDraft, listDrafts } from "@/lib/server/drafts/reads";
import { discardDraft, saveDraft } from "@/lib/server/drafts/writes";
import { keepAsCopy } from "@/lib/server/recipes/copy";
import { findFamily } from "@/lib/server/recipes/family";
import { findOrigin } from "@/lib/server/recipes/origin";
import { findRecipe } from "@/lib/server/recipes/reads";
import { createRecipe, saveRevision } from "@/lib/server/recipes/writes";
import { parsedRecipe } from "../support/brewing";
import { join, newClub } from "../support/club";

const WRITER = randomUUID();
const NO_ROWS = { steps: [], mashGrist: [], kettleGrist: [], boilHops: [], standHops: [], dryHops: [] };

/** What a page sends; the notes tell one text from another. */
function change(a: Pick<DraftChange, "id" | "baseRev" | "lockVersion">, notes = "half a thought"): DraftChange {
  const fields = { notes: { text: notes, exact: null, isTyped: false } };
  const kept = { fields, rows: NO_ROWS, kettle: "", note: "", writer: WRITER, preferences: DEFAULT_PREFERENCES };
  return draftChange.parse({ ...a, title: "Draft ale", kept });
}

const newDraft = () => ({ id: randomUUID(), baseRev: null, lockVersion: 0 });

describe("drafts", () => {
  it("are read back by their writer as they were kept, and counted up", async () => {
    const { organiser } = await newClub();
    const first = change(newDraft());
    expect(await saveDraft(organiser, first)).toMatchObject({ ok: true, lockVersion: 1 });
    expect(await saveDraft(organiser, change({ ...first, lockVersion: 1 }, "more"))).toMatchObject({ lockVersion: 2 });
    const found = await findDraft(organiser, first.id);
    expect(found).toMatchObject({ id: first.id, baseRev: null, lockVersion: 2 });
    expect(found?.kept.fields.notes?.text).toBe("more");
  });

  it("are kept while the clock of the server is set back, and nothing is said to be older than it began", async () => {
    const { organiser } = await newClub();
    const first = change(newDraft());
    const begun = await saveDraft(organiser, first);
    vi.useFakeTimers({ toFake: ["Date"], now: Date.now() - 3_600_000 });
    try {
      const { savedAt } = begun.ok ? begun : expect.fail("it was not begun");
      const again = await saveDraft(organiser, change({ ...first, lockVersion: 1 }, "more"));
      expect(again).toEqual({ ok: true, lockVersion: 2, savedAt });
      expect(await saveDraft(organiser, change(newDraft()))).toMatchObject({ ok: true });
    } finally {
      vi.useRealTimers();
    }
    expect((await findDraft(organiser, first.id))?.kept.fields.notes?.text).toBe("more");
  });

  it("of a recipe are told to the club with writer and time; the text is the writer's alone", async () => {
    const { organiser } = await newClub();
    const member = await join(organiser, "member");
    const { id } = await createRecipe(organiser, parsedRecipe());
    await saveDraft(member, change({ id, baseRev: 1, lockVersion: 0 }));
    expect(await listDrafts(organiser, id)).toMatchObject([
      { recipeId: id, writerName: "Some member", isOwn: false, title: "Draft ale" },
    ]);
    expect(await findDraft(organiser, id)).toBeNull();
    expect((await findDraft(member, id))?.kept.fields.notes?.text).toBe("half a thought");
  });

  it("of a new recipe are seen by nobody else", async () => {
    const { organiser } = await newClub();
    const member = await join(organiser, "member");
    await saveDraft(member, change(newDraft()));
    expect(await listDrafts(organiser, null)).toEqual([]);
    expect(await listDrafts(member, null)).toHaveLength(1);
  });

  it("let one of ten pages that write at once through, and tell the others what it kept", async () => {
    const { organiser } = await newClub();
    const draft = newDraft();
    const outcomes = await Promise.all(
      Array.from({ length: 10 }, (_, i) => saveDraft(organiser, change(draft, `page ${String(i)}`))),
    );
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    const kept = (await findDraft(organiser, draft.id))?.kept.fields.notes?.text;
    for (const outcome of outcomes) {
      if (outcome.ok) continue;
      expect(outcome.reason === "stale" && outcome.newer.kept.fields.notes?.text).toBe(kept);
    }
  });

  it("are gone for a page that comes back after they were discarded, and do not come to life again", async () => {
    const { organiser } = await newClub();
    const draft = newDraft();
    await saveDraft(organiser, change(draft));
    await discardDraft(organiser, draft.id);
    expect(await saveDraft(organiser, change({ ...draft, lockVersion: 1 }))).toEqual({ ok: false, reason: "gone" });
    expect(await findDraft(organiser, draft.id)).toBeNull();
  });

  it("end with the revision that they became, and only then", async () => {
    const { organiser } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    await saveDraft(organiser, change({ id, baseRev: 1, lockVersion: 0 }));
    const other = { ...parsedRecipe(), title: "Renamed ale", message: "a name" };
    expect(await saveRevision(organiser, { id, baseRev: 7, ...other })).toMatchObject({ reason: "stale" });
    expect(await findDraft(organiser, id)).not.toBeNull();
    expect(await saveRevision(organiser, { id, baseRev: 1, ...other })).toEqual({ ok: true, rev: 2 });
    expect(await findDraft(organiser, id)).toBeNull();
  });

  it("end with the new recipe that they became", async () => {
    const { organiser } = await newClub();
    const draft = newDraft();
    await saveDraft(organiser, change(draft));
    const { id } = await createRecipe(organiser, parsedRecipe(), draft.id);
    expect(await findRecipe(organiser, id)).not.toBeNull();
    expect(await findDraft(organiser, draft.id)).toBeNull();
  });

  it("of another club, or of a recipe that is not there, are not found", async () => {
    const { organiser } = await newClub();
    const { organiser: stranger } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe());
    const foreign = saveDraft(stranger, change({ id, baseRev: 1, lockVersion: 0 }));
    await expect(foreign).rejects.toMatchObject({ code: "NOT_FOUND" });
    await saveDraft(organiser, change({ id, baseRev: 1, lockVersion: 0 }));
    expect(await findDraft(stranger, id)).toBeNull();
    expect(await listDrafts(stranger, id)).toEqual([]);
  });

  it("are kept by nobody who may not write recipes", async () => {
    const { judge } = await newClub("judge");
    await expect(saveDraft(judge, change(newDraft()))).rejects.toMatchObject({ code: "FORBIDDEN" });
    await expect(discardDraft(judge, randomUUID())).rejects.toMatchObject({ code: "FORBIDDEN" });
  });
});

describe("draftChange", () => {
  it.each([
    ["a row without a key", { rows: { ...NO_ROWS, steps: [{ key: "", cells: {} }] } }],
    ["more rows than a recipe has", { rows: { ...NO_ROWS, steps: Array.from({ length: 81 }, rowAt) } }],
    ["a field that no form has", { fields: { "<script>": { text: "", exact: null, isTyped: false } } }],
    ["something beside it", { more: 1 }],
  ])("refuses %s", (_what, wrong) => {
    const right = change(newDraft());
    expect(draftChange.safeParse({ ...right, kept: { ...right.kept, ...wrong } }).success).toBe(false);
  });
});

function rowAt(_: unknown, i: number): object {
  return { key: `new-${String(i)}`, cells: {} };
}

describe("a draft that is kept as a recipe of its own", () => {
  it("goes back to the revision that it was begun on, credits its author, and ends as a draft", async () => {
    const { organiser, member } = await newClub("member");
    const { id } = await createRecipe(organiser, parsedRecipe("Old ale"));
    const { content } = parsedRecipe();
    const theirs = { id, baseRev: 1, title: "Newer ale", message: "", content: { ...content, notes: "Theirs" } };
    await saveRevision(organiser, theirs);
    expect(await saveDraft(member, change({ id, baseRev: 1, lockVersion: 0 }))).toMatchObject({ ok: true });
    const mine = { id, baseRev: 1, title: "My ale", message: "Mine", content: { ...content, notes: "Mine" } };
    const { id: own } = await keepAsCopy(member, mine);

    expect(await findRecipe(member, own)).toMatchObject({
      title: "My ale",
      message: "Mine",
      content: { notes: "Mine" },
    });
    expect(await findOrigin(member, own)).toMatchObject({
      credits: [{ title: "Newer ale", author: "Olga Organiser" }],
      link: { recipeId: id },
      rev: 1,
    });
    expect((await findRecipe(member, id))?.content.notes).toBe("Theirs");
    expect(await findDraft(member, id)).toBeNull();
    const family = JSON.stringify(await findFamily(member, id));
    expect(family).toContain("My ale");
  });

  it("needs the right to write, and a revision of this club", async () => {
    const { organiser, judge } = await newClub("judge");
    const { organiser: stranger } = await newClub();
    const { id } = await createRecipe(organiser, parsedRecipe("Old ale"));
    const draft = { id, baseRev: 1, ...parsedRecipe("Mine") };
    await expect(keepAsCopy(judge, draft)).rejects.toMatchObject({ code: "FORBIDDEN" });
    await expect(keepAsCopy(stranger, draft)).rejects.toMatchObject({ code: "NOT_FOUND" });
    await expect(keepAsCopy(organiser, { ...draft, baseRev: 2 })).rejects.toMatchObject({ code: "NOT_FOUND" });
  });
});
