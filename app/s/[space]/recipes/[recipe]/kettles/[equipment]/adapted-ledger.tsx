import type { Recipe } from "@/lib/calc/ledger";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { Preferences } from "@/lib/model/preferences";
import type { RecipeRevision } from "@/lib/model/recipe-content";
import { RecipeLedger } from "@/lib/ui/recipe/recipe-ledger";

interface AdaptedLedgerProps {
  readonly revision: RecipeRevision;
  readonly profile: EquipmentProfile;
  readonly recipe: Recipe;
  readonly preferences: Preferences;
  /** The recipe breaks limits of this kettle and is shown for comparison. */
  readonly asIntended?: boolean;
}

/** The adapted recipe as a ledger, with every number open to its explanation. */
export function AdaptedLedger({ revision, profile, recipe, preferences, asIntended = false }: AdaptedLedgerProps) {
  const { content, title } = revision;
  const { equipment } = profile;
  return (
    <section aria-labelledby="ledger" className="mt-10">
      <h2 id="ledger" className="mb-3">
        {asIntended ? "The ledger as intended, beyond the limits" : `The ledger on ${equipment.name}`}
      </h2>
      <RecipeLedger
        title={title}
        content={{ ...content, recipe, entered: {}, notes: "" }}
        kettles={[{ id: profile.id, label: equipment.name, equipment }]}
        preferences={preferences}
        saving={null}
      />
    </section>
  );
}
