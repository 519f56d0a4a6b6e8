import { wayName } from "@/lib/model/adaptation";
import { isOpen } from "@/lib/model/shared-brew";
import type { Member } from "@/lib/server/session";
import type { KettleSheet } from "@/lib/server/shared-brews/find-sheet";
import { Notice } from "@/lib/ui/notice";
import { planSheetAction, takeWayAction } from "./actions";
import { HiddenForm } from "./hidden-form";
import { WaysOut } from "./ways-out";

interface FitSectionProps {
  readonly member: Member;
  readonly sheet: KettleSheet;
  readonly mayWrite: boolean;
}

/** Whether the recipe fits under the rules, which way out is taken, and the button that plans the brew. */
export function FitSection({ member, sheet, mayWrite }: FitSectionProps) {
  const { planned, profile, participant, adapted } = sheet;
  const { spaceSlug, preferences } = member;
  const ids = { sharedBrewId: planned.id, equipmentId: profile.id };
  const brew = participant?.brew ?? null;
  if (brew !== null) {
    if (brew.planVersion === planned.version) return null;
    return (
      <Notice kind="attention">
        The brew on this kettle was planned under version {brew.planVersion} of the plan, and stays as it is.
      </Notice>
    );
  }
  const mayPlan = mayWrite && participant !== null && isOpen(planned.state) && adapted.chosen !== null;
  return (
    <section aria-labelledby="fit">
      <div className="flex flex-wrap items-center justify-between gap-4">
        <h2 id="fit">{fitWords(sheet)}</h2>
        {mayPlan ? (
          <HiddenForm values={ids} action={planSheetAction.bind(null, spaceSlug)} pending="Planning…">
            Plan this brew
          </HiddenForm>
        ) : null}
      </div>
      {adapted.isWayLost ? (
        <Notice kind="attention">The way out that was taken is no longer there under this plan: take another.</Notice>
      ) : null}
      <WaysOut
        adapted={adapted}
        ids={ids}
        preferences={preferences}
        take={mayWrite ? takeWayAction.bind(null, spaceSlug) : null}
      />
    </section>
  );
}

function fitWords({ adapted }: KettleSheet): string {
  if (adapted.outcome.ok) return "It fits";
  const way = adapted.chosen?.way ?? null;
  return way === null ? "It does not fit as planned" : `It fits on the way out taken: ${wayName(way)}`;
}
