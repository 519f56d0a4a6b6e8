"use client";

import { useState } from "react";
import type { ImportPreview } from "@/lib/model/exchange/preview";
import type { Preferences } from "@/lib/model/preferences";
import { SubmitButton } from "@/lib/ui/submit-button";
import { FileSummary } from "./file-summary";
import { RecipePreview } from "./recipe-preview";

interface PreviewFormProps {
  readonly preview: ImportPreview;
  readonly preferences: Preferences;
  readonly isTaking: boolean;
  readonly onTake: (chosen: readonly number[]) => void;
}

/** What would be taken, recipe by recipe, with a box for each. Nothing of it is kept yet. */
export function PreviewForm({ preview, preferences, isTaking, onTake }: PreviewFormProps) {
  const { recipes } = preview;
  const [chosen, setChosen] = useState<ReadonlySet<number>>(
    () => new Set(recipes.filter(({ isTaken }) => isTaken).map(({ place }) => place)),
  );

  function choose(place: number, isChosen: boolean): void {
    setChosen((before) => new Set(isChosen ? [...before, place] : [...before].filter((other) => other !== place)));
  }

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        onTake([...chosen].sort((a, b) => a - b));
      }}
    >
      <FileSummary {...preview} />
      {recipes.map((recipe) => (
        <RecipePreview
          key={recipe.place}
          recipe={recipe}
          preferences={preferences}
          isOpen={recipes.length === 1}
          isChosen={chosen.has(recipe.place)}
          onChoose={(isChosen) => choose(recipe.place, isChosen)}
        />
      ))}
      <div className="mt-6">
        <SubmitButton pending="Importing…" isPending={isTaking} disabled={chosen.size === 0}>
          {chosen.size === 1 ? "Import 1 recipe" : `Import ${String(chosen.size)} recipes`}
        </SubmitButton>
      </div>
    </form>
  );
}
