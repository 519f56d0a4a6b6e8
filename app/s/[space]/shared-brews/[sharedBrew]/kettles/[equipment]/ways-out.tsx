import type { WayOut } from "@/lib/calc/adapt";
import type { ActionResult } from "@/lib/model/action-result";
import { wayName, type Adapted } from "@/lib/model/adaptation";
import type { Preferences } from "@/lib/model/preferences";
import { LimitLine } from "@/lib/ui/equipment/limit-line";
import { Quantity } from "@/lib/ui/quantity";
import { HiddenForm } from "./hidden-form";

interface WaysOutProps {
  readonly adapted: Adapted;
  readonly ids: { readonly sharedBrewId: string; readonly equipmentId: string };
  readonly preferences: Preferences;
  /** null for a reader who may not choose for this kettle. */
  readonly take: ((previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>) | null;
}

/** Why the recipe does not fit under the rules, and what would make it fit, the nearest to the plan first. */
export function WaysOut({ adapted, ids, preferences, take }: WaysOutProps) {
  const { outcome, chosen } = adapted;
  const taken = chosen === null || chosen.way === null ? null : wayName(chosen.way);
  if (outcome.ok) return null;
  return (
    <>
      <ul className="my-2">
        {outcome.reasons.map((limit) => (
          <li key={limit.id} className="notice notice-attention max-w-none">
            <LimitLine limit={limit} preferences={preferences} withReason />
          </li>
        ))}
      </ul>
      {outcome.waysOut.length === 0 ? (
        <p>No change of volume, mash or boil brings it within the limits of this kettle.</p>
      ) : null}
      <ol className="list-ruled">
        {outcome.waysOut.map((way) => (
          <li key={wayName(way)} className="flex flex-wrap items-center justify-between gap-x-6 gap-y-2 py-2">
            <WayLine way={way} preferences={preferences} />
            {wayName(way) === taken ? (
              <span>taken</span>
            ) : take === null ? null : (
              <HiddenForm values={{ ...ids, way: wayName(way) }} action={take} pending="Taking…" kind="quiet">
                Take this way<span className="sr-only">: {wayName(way)}</span>
              </HiddenForm>
            )}
          </li>
        ))}
      </ol>
    </>
  );
}

function WayLine({ way, preferences }: { readonly way: WayOut; readonly preferences: Preferences }) {
  const { quantities } = way.ledger;
  const name = wayName(way);
  return (
    <span>
      {name.charAt(0).toUpperCase() + name.slice(1)}:{" "}
      <Quantity value={quantities["fermenter.volume"]} dimension="volume" preferences={preferences} /> at{" "}
      <Quantity value={quantities["fermenter.originalExtract"]} dimension="extract" preferences={preferences} />,{" "}
      <Quantity value={quantities["fermenter.bitterness"]} dimension="bitterness" preferences={preferences} />
      {way.times === 1 ? "" : `, brewed ${String(way.times)} times`}
    </span>
  );
}
