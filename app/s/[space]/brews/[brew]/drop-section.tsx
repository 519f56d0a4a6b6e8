import type { Brew } from "@/lib/model/brew";
import { Day } from "@/lib/ui/day";
import { Notice } from "@/lib/ui/notice";
import { DropForm, type DropAction } from "./drop-form";

interface DropSectionProps {
  readonly brew: Pick<Brew, "state" | "mayWrite" | "dropped" | "lockVersion" | "readings">;
  readonly action: DropAction;
}

/** That a brew was dropped; or the way to drop one that is only planned. */
export function DropSection({ brew, action }: DropSectionProps) {
  const { state, mayWrite, dropped, lockVersion, readings } = brew;
  if (dropped !== null) {
    return (
      <Notice kind="attention">
        Dropped on <Day at={dropped.at} /> by {dropped.byName}
        {dropped.why === "" ? "" : `: ${dropped.why}`}. It counts in no comparison, and what it took from its lots is on
        the shelf again.
      </Notice>
    );
  }
  if (!mayWrite || state !== "planned") return null;
  return <DropForm lockVersion={lockVersion} hasReadings={readings.length > 0} action={action} />;
}
