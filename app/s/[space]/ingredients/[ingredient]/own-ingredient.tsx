import type { ClubIngredient } from "@/lib/model/ingredient";
import type { Preferences } from "@/lib/model/preferences";
import { Notice } from "@/lib/ui/notice";
import { archiveIngredientAction, saveIngredientAction } from "../actions";
import { ArchiveForm } from "../archive-form";
import { ChangeForm } from "./change-form";

interface OwnIngredientProps {
  readonly space: string;
  readonly ingredient: ClubIngredient;
  readonly preferences: Preferences;
}

/** What only an ingredient of the club has: who added it, notes, and the forms that change it. */
export function OwnIngredient({ space, ingredient, preferences }: OwnIngredientProps) {
  const { id, what, notes, createdByName, isArchived, lockVersion, mayWrite } = ingredient;
  return (
    <>
      <h2 className="mt-8 mb-2">The club’s own</h2>
      {isArchived ? (
        <Notice>It is put away: recipes do not offer it, and those that name it are as they were.</Notice>
      ) : null}
      <p className="mb-2">Added by {createdByName}.</p>
      {notes === "" ? null : <p className="mb-4 max-w-3xl whitespace-pre-line">{notes}</p>}
      {mayWrite ? (
        <div className="no-print flex max-w-2xl flex-col gap-4">
          <details>
            <summary className="target">Change it</summary>
            <ChangeForm
              key={lockVersion}
              ingredient={ingredient}
              preferences={preferences}
              action={saveIngredientAction.bind(null, space, what.kind)}
            />
          </details>
          <ArchiveForm
            what="ingredient"
            {...{ id, lockVersion, isArchived }}
            action={archiveIngredientAction.bind(null, space)}
          />
        </div>
      ) : null}
    </>
  );
}
