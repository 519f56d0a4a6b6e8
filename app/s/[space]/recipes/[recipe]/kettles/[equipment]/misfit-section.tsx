import type { AdaptOutcome } from "@/lib/calc/adapt";
import { wayName } from "@/lib/model/adaptation";
import type { Preferences } from "@/lib/model/preferences";
import { Notice } from "@/lib/ui/notice";
import { AdaptedLedger } from "./adapted-ledger";
import { LimitList } from "./limit-list";
import type { SheetActions } from "./sheet-actions";
import type { Sheet } from "./read-sheet";
import { WayOutSection } from "./way-out";

interface MisfitSectionProps {
  readonly sheet: Sheet;
  readonly outcome: Extract<AdaptOutcome, { readonly ok: false }>;
  readonly actions: SheetActions;
  readonly preferences: Preferences;
}

/** A recipe that does not fit as intended: why, and the ways out with the nearest to the intention first. */
export function MisfitSection({ sheet, outcome, actions, preferences }: MisfitSectionProps) {
  const { revision, profile, writtenLedger, chosen } = sheet;
  const { recipe, ledger, waysOut } = outcome;
  const written = { recipe: revision.content.recipe, ledger: writtenLedger };
  const isChosen = chosen !== null;
  return (
    <div className={isChosen ? "no-print" : undefined}>
      <h2 className="mt-6 mb-2">{isChosen ? "It does not fit as intended" : "It does not fit"}</h2>
      {ledger === null ? (
        <Notice kind="attention">No grist gives a wort of this strength on this kettle.</Notice>
      ) : (
        <LimitList limits={ledger.limits} preferences={preferences} />
      )}
      <h2 className="mt-8 mb-2">Ways out</h2>
      {waysOut.length === 0 ? (
        <p>No change of volume, mash or boil brings it within the limits of this kettle.</p>
      ) : (
        <p className="mb-2 text-muted">Each is computed whole; the nearest to the recipe as written comes first.</p>
      )}
      {waysOut.map((way, i) => (
        <WayOutSection
          key={wayName(way)}
          {...{ way, written, preferences, actions }}
          name={wayName(way)}
          rank={i + 1}
          isOpen={i === 0 && !isChosen}
        />
      ))}
      {recipe === null || isChosen ? null : (
        <AdaptedLedger {...{ revision, profile, recipe, preferences }} asIntended />
      )}
    </div>
  );
}
