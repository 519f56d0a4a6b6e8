"use client";

import { useState } from "react";
import { countOf, type PreviewedRecipe } from "@/lib/model/exchange/preview";
import type { Preferences } from "@/lib/model/preferences";
import { FieldTable } from "./field-table";
import { FigureTable } from "./figure-table";

interface RecipePreviewProps {
  readonly recipe: PreviewedRecipe;
  readonly preferences: Preferences;
  readonly isOpen: boolean;
  readonly isChosen: boolean;
  readonly onChoose: (isChosen: boolean) => void;
}

/** One recipe of the file: whether it is taken, its figures beside ours, and its lines when they are asked for. */
export function RecipePreview({ recipe, preferences, isOpen, isChosen, onChoose }: RecipePreviewProps) {
  const { title, isTaken, problems, derived, fields, figures } = recipe;
  // Five hundred recipes have a hundred lines each; only those that are open are laid out.
  const [isShown, setShown] = useState(isOpen);
  return (
    <section aria-label={title} className="mt-6 border-t border-rule pt-4">
      <label className="check-line font-semibold">
        <input
          type="checkbox"
          checked={isChosen}
          disabled={!isTaken}
          onChange={(event) => onChoose(event.currentTarget.checked)}
        />
        {title}
      </label>
      <p>{summaryOf(recipe)}</p>
      {problems.length > 0 && (
        <div className="notice notice-attention">
          <p>This recipe cannot be taken:</p>
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{problem}.</li>
            ))}
          </ul>
        </div>
      )}
      {figures.length > 0 && <FigureTable figures={figures} preferences={preferences} />}
      <details open={isShown} onToggle={(event) => setShown(event.currentTarget.open)}>
        <summary className="cursor-pointer py-3">Line by line</summary>
        {isShown && (
          <>
            {derived.length > 0 && (
              <ul className="mb-4 list-disc ps-5">
                {derived.map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            )}
            <FieldTable title={title} fields={fields} />
          </>
        )}
      </details>
    </section>
  );
}

function summaryOf({ fields }: PreviewedRecipe): string {
  const understood = countOf(fields, "taken", "converted");
  const kept = countOf(fields, "kept");
  const refused = countOf(fields, "refused");
  return `${String(understood)} of ${String(fields.length)} fields understood; ${String(kept)} kept for export; ${String(refused)} refused.`;
}
