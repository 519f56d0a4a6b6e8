import { describe, expect, it } from "vitest";
import { DEFAULT_PREFERENCES, type Preferences } from "@/lib/model/preferences";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { addRow, typeInRow } from "@/lib/ui/recipe/change-rows";
import type { Draft } from "@/lib/ui/recipe/draft";
import { draftFromContent } from "@/lib/ui/recipe/draft-from-content";
import { typed } from "@/lib/ui/recipe/entry";
import { readDraft } from "@/lib/ui/recipe/read-draft";
import { garageKettle, paleAle, sameDay } from "../../support/brewing-fixtures";

const US: Preferences = { units: "us", gravity: "plato", colour: "srm", theme: "auto" };

const content: RecipeContent = {
  recipe: paleAle,
  entered: {},
  style: null,
  notes: "",
  writtenOn: { name: garageKettle.name, equipment: garageKettle, ambient: sameDay },
};

const open = (preferences: Preferences, changed: Partial<RecipeContent> = {}): Draft =>
  draftFromContent({ title: "Pale ale", content: { ...content, ...changed }, preferences });

/** The draft with another text for the mass of the first malt. */
const withMass = (text: string, preferences = DEFAULT_PREFERENCES): Draft =>
  typeInRow(open(preferences), "mashGrist", "stored-0", { kg: text });

describe("readDraft", () => {
  it.each([
    ["metric", DEFAULT_PREFERENCES],
    ["US", US],
  ])("reads a stored recipe back exactly as it was, in %s units", (_name, preferences) => {
    const { written, problems } = readDraft(open(preferences), preferences);
    expect(problems).toEqual({});
    expect(written?.recipe).toEqual(paleAle);
    expect(written?.ambient).toEqual(sameDay);
  });

  it("reads pounds and ounces as kilograms", () => {
    const { written } = readDraft(withMass("10 lb 2 oz"), DEFAULT_PREFERENCES);
    // 10.125 lb of 0.45359237 kg each: NIST SP 811, exact.
    expect(written?.recipe.fermentables[0]?.kg).toBeCloseTo(4.59262275, 8);
  });

  it("reads a number alone in the units of the person", () => {
    // 0.45359237 kg to the pound: NIST SP 811, exact.
    expect(readDraft(withMass("10", US), US).written?.recipe.fermentables[0]?.kg).toBeCloseTo(4.5359237, 7);
  });

  it.each(["", "some", "-4", "99999"])("does not read the mass %j, and names the field", (text) => {
    const { written, problems } = readDraft(withMass(text), DEFAULT_PREFERENCES);
    expect(written).toBeNull();
    expect(problems["mashGrist.stored-0.kg"]).toMatch(/^Mass of Pale ale malt/);
  });

  it("tells value and range of a mass that is too large", () => {
    const { problems } = readDraft(withMass("99999"), DEFAULT_PREFERENCES);
    expect(problems["mashGrist.stored-0.kg"]).toContain("99999");
    expect(problems["mashGrist.stored-0.kg"]).toContain("5000");
  });

  it("passes over a row that has only been added", () => {
    const draft = addRow(addRow(open(DEFAULT_PREFERENCES), "mashGrist", "new-1", null), "dryHops", "new-2", null);
    expect(readDraft(draft, DEFAULT_PREFERENCES).written?.recipe).toEqual(paleAle);
  });

  it("refuses a recipe without fermentables", () => {
    const draft = open(DEFAULT_PREFERENCES);
    const empty = { ...draft, rows: { ...draft.rows, mashGrist: [], kettleGrist: [] } };
    expect(readDraft(empty, DEFAULT_PREFERENCES).problems.mashGrist).toMatch(/at least one fermentable/);
  });

  it("puts a conflict between two fields at the control that somebody would change", () => {
    const draft = open(DEFAULT_PREFERENCES);
    const shorter = { ...draft, fields: { ...draft.fields, boil: typed("30") } };
    expect(Object.keys(readDraft(shorter, DEFAULT_PREFERENCES).problems)).toEqual(["boilHops.stored-0.minutes"]);
  });

  it("keeps what was typed, by the path of its stored field", () => {
    expect(readDraft(withMass("10 lb 2 oz"), DEFAULT_PREFERENCES).entered).toEqual({
      "fermentables.0.kg": "10 lb 2 oz",
    });
  });
});

describe("draftFromContent", () => {
  const massOf = (draft: Draft): string | undefined => draft.rows.mashGrist[0]?.cells.kg?.text;
  const entered = { "fermentables.0.kg": "4.4" };

  it("shows what was typed to a reader for whom it means the same", () => {
    expect(massOf(open(DEFAULT_PREFERENCES, { entered: { "fermentables.0.kg": "4400 g" } }))).toBe("4400 g");
  });

  it("does not show a number typed in kilograms as pounds", () => {
    // 4.4 kg / 0.45359237 kg: NIST SP 811.
    expect(massOf(open(US, { entered }))).toBe("9.7");
  });
});
