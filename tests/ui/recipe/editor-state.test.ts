import { describe, expect, it } from "vitest";
import { DEFAULT_PREFERENCES } from "@/lib/model/preferences";
import { draftFromContent } from "@/lib/ui/recipe/draft-from-content";
import type { EditorAction } from "@/lib/ui/recipe/editor-action";
import { editorReducer, openEditor, type EditorState } from "@/lib/ui/recipe/editor-state";
import { isSame } from "@/lib/ui/is-same";
import { garageKettle, paleAle, sameDay } from "../../support/brewing-fixtures";

const smaller = { ...garageKettle, name: "Second kettle" };
const setting = {
  kettles: [
    { id: "garage", label: "Garage", equipment: garageKettle },
    { id: "second", label: "Second", equipment: smaller },
  ],
  preferences: DEFAULT_PREFERENCES,
};
const content = {
  recipe: paleAle,
  entered: {},
  style: null,
  notes: "",
  writtenOn: { name: "Garage", equipment: garageKettle, ambient: sameDay },
};
const reduce = editorReducer(setting);

function opened(): EditorState {
  return openEditor(draftFromContent({ title: "Ale", content, preferences: DEFAULT_PREFERENCES }), "garage", setting);
}

const after = (...actions: readonly EditorAction[]): EditorState =>
  actions.reduce((state, action) => reduce(state, action, 0), opened());
const typeMass = (text: string): EditorAction => ({
  type: "type in row",
  list: "mashGrist",
  row: "stored-0",
  column: "kg",
  text,
});
const names = ({ draft }: EditorState): readonly (string | undefined)[] =>
  draft.rows.mashGrist.map(({ cells }) => cells.name?.text);

describe("editorReducer", () => {
  it("computes a ledger from the first moment", () => {
    expect(opened().shown?.brewed.recipe).toEqual(paleAle);
    expect(opened().waitingFor).toEqual([]);
  });

  it("keeps the last ledger while a field cannot be read, and says for what it waits", () => {
    const state = after(typeMass("5 kilos of"));
    expect(state.shown?.brewed.recipe).toEqual(paleAle);
    expect(state.waitingFor).toHaveLength(1);
  });

  it("goes on as soon as the field can be read", () => {
    const state = after(typeMass("x"), typeMass("5"));
    expect(state.waitingFor).toEqual([]);
    expect(state.shown?.brewed.recipe.fermentables[0]?.kg).toBe(5);
  });

  it("gives a stronger wort for more malt", () => {
    const strength = (state: EditorState): number =>
      state.shown?.brewed.ledger.quantities["fermenter.originalExtract"] ?? 0;
    expect(strength(after(typeMass("6")))).toBeGreaterThan(strength(opened()));
  });

  it("keeps the last ledger when nothing would run off", () => {
    const state = after({ type: "type", field: "intoFermenter", text: "0.5" }, typeMass("500"));
    expect(state.shown).not.toBeNull();
    expect(state.waitingFor[0]).toMatch(/too|grain|°P/i);
  });

  it("moves a row and leaves it where the list ends", () => {
    const move = (by: -1 | 1): EditorAction => ({ type: "move row", list: "mashGrist", row: "stored-0", by });
    expect(names(after(move(1)))).toEqual(["Munich malt light", "Pale ale malt", "Caramel malt 60L"]);
    expect(names(after(move(-1)))).toEqual(names(opened()));
  });

  it("adds a row below the one where it was asked for", () => {
    const state = after({ type: "add row", list: "mashGrist", below: "stored-0" });
    expect(names(state)).toEqual(["Pale ale malt", "", "Munich malt light", "Caramel malt 60L"]);
  });

  it("doubles the mass of a row by duplicating it", () => {
    const state = after({ type: "duplicate row", list: "mashGrist", row: "stored-0" });
    const grist = (of: EditorState): number => of.shown?.brewed.ledger.quantities["mash.grist"] ?? 0;
    // 4.4 kg twice instead of once.
    expect(grist(state) - grist(opened())).toBeCloseTo(4.4, 9);
  });

  it("brings a removed row back to its place", () => {
    const remove: EditorAction = { type: "remove row", list: "mashGrist", row: "stored-1", name: "Munich malt light" };
    expect(names(after(remove))).toEqual(["Pale ale malt", "Caramel malt 60L"]);
    expect(names(after(remove, { type: "undo" }))).toEqual(names(opened()));
  });

  it("computes on another kettle without a change of the draft", () => {
    const state = after({ type: "choose kettle", kettle: "second" });
    expect(state.shown?.brewed.equipment.name).toBe("Second kettle");
    expect(state.draft).toEqual(opened().draft);
  });
});

it("computes a stored recipe exactly as it is stored, in whatever units somebody reads it", () => {
  for (const preferences of [DEFAULT_PREFERENCES, { ...DEFAULT_PREFERENCES, units: "us" as const }]) {
    const { shown } = openEditor(draftFromContent({ title: "Ale", content, preferences }), "garage", {
      ...setting,
      preferences,
    });
    expect(isSame(shown?.brewed.recipe, paleAle)).toBe(true);
    expect(isSame(shown?.brewed.ambient, sameDay)).toBe(true);
  }
});
