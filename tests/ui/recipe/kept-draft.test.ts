import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { DEFAULT_PREFERENCES, type Preferences } from "@/lib/model/preferences";
import { keptDraft } from "@/lib/model/recipe-draft";
import { draftFromContent } from "@/lib/ui/recipe/draft-from-content";
import { draftFromKept, keptDraftOf } from "@/lib/ui/recipe/kept-draft";
import { readDraft } from "@/lib/ui/recipe/read-draft";
import { typeInRow } from "@/lib/ui/recipe/change-rows";
import { garageKettle, paleAle, sameDay } from "../../support/brewing-fixtures";

const METRIC = DEFAULT_PREFERENCES;
const US: Preferences = { ...DEFAULT_PREFERENCES, units: "us" };
const content = {
  recipe: paleAle,
  entered: {},
  style: null,
  notes: "",
  writtenOn: { name: "Garage", equipment: garageKettle, ambient: sameDay },
};
const opened = draftFromContent({ title: "Ale", content, preferences: METRIC });

function throughServer(draft: typeof opened, reader: Preferences) {
  const kept = keptDraftOf({ draft, kettle: "garage", note: "", writer: randomUUID(), preferences: METRIC });
  // What a JSON column and the schema make of it.
  const back = keptDraft.parse(JSON.parse(JSON.stringify(kept)));
  return draftFromKept(back, draftFromContent({ title: "Ale", content, preferences: reader }), reader);
}

describe("a kept draft", () => {
  it("opens as it was, also where a field holds no number yet", () => {
    const draft = typeInRow(opened, "mashGrist", "stored-0", { kg: "about 5" });
    expect(throughServer(draft, METRIC)).toEqual(draft);
  });

  it("means the same to a reader whose units have changed since", () => {
    const draft = typeInRow(opened, "mashGrist", "stored-0", { kg: "5" });
    const again = throughServer(draft, US);
    expect(readDraft(again, US).written?.recipe.fermentables[0]?.kg).toBe(5);
    // 5 kg is 11.023 lb: 1 lb is 0.45359237 kg by definition.
    expect(again.rows.mashGrist[0]?.cells.kg?.text).toBe("11.02");
  });
});
