import type { IngredientLot } from "@/lib/model/ingredient-lot";
import type { Preferences } from "@/lib/model/preferences";
import { ArchiveForm } from "../../archive-form";
import { archiveLotAction, moveLotAction, saveLotAction } from "../actions";
import { LotChangeForm } from "./lot-change-form";
import { MoveForm } from "./move-form";

interface LotFormsProps {
  readonly space: string;
  readonly lot: IngredientLot;
  readonly names: readonly string[];
  readonly preferences: Preferences;
}

/** The forms of who keeps the lot. A new version begins them anew, so that nothing stale is sent twice. */
export function LotForms({ space, lot, names, preferences }: LotFormsProps) {
  const { id, lockVersion, isArchived, what } = lot;
  return (
    <div className="no-print mt-6 flex max-w-2xl flex-col gap-4">
      <details open>
        <summary className="target">Count it, or note what came or went</summary>
        <MoveForm key={lockVersion} {...{ lot, preferences }} action={moveLotAction.bind(null, space, what.kind)} />
      </details>
      <details>
        <summary className="target">Change what it is</summary>
        <LotChangeForm
          key={lockVersion}
          {...{ lot, names, preferences }}
          action={saveLotAction.bind(null, space, what.kind)}
        />
      </details>
      <ArchiveForm what="lot" {...{ id, lockVersion, isArchived }} action={archiveLotAction.bind(null, space)} />
    </div>
  );
}
