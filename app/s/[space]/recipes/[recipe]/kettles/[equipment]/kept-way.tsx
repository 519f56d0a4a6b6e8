import type { Preferences } from "@/lib/model/preferences";
import { toldWay } from "@/lib/ui/kettles/kettle-figures";
import { ChosenWay } from "../chosen-way";
import type { Sheet } from "./read-sheet";
import type { SheetActions } from "./sheet-actions";

interface KeptWayProps {
  readonly sheet: Sheet;
  readonly choose: SheetActions["choose"];
  readonly preferences: Preferences;
}

/** The way out that was kept for this kettle, whether it still works, and the button that takes it back. */
export function KeptWay({ sheet, choose, preferences }: KeptWayProps) {
  const { kept, chosen, outcome, isWayLost, revision, profile } = sheet;
  if ((kept?.choice.way ?? null) === null || kept === null) return null;
  const way = chosen?.way ?? null;
  const shown = { fit: outcome.ok ? "fits" : way === null ? "not" : "way", isWayLost } as const;
  const about = choose ?? { space: "", recipeId: revision.id, rev: revision.rev, volume: kept.choice.volume };
  return (
    <div className="no-print mt-4">
      <ChosenWay
        {...about}
        entry={{ key: profile.id, kept, mayChoose: choose !== null }}
        figures={{ ...shown, way: way === null ? null : toldWay(way) }}
        preferences={preferences}
      />
    </div>
  );
}
