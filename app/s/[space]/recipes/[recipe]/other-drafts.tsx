"use client";

import { ClockTime } from "@/lib/ui/brew/clock-time";
import type { OtherDraft } from "./of-others";
import { useOtherDrafts } from "./use-other-drafts";

interface OtherDraftsProps {
  readonly drafts: readonly OtherDraft[];
  /** Where the present ones are read. */
  readonly address: string;
}

/** Who else is writing on this recipe: whoever publishes second will be told, and nothing is overwritten. */
export function OtherDrafts({ drafts, address }: OtherDraftsProps) {
  const others = useOtherDrafts(drafts, address);
  return (
    <div aria-live="polite" className="no-print">
      {others.length === 0 ? null : (
        <ul className="mb-3 text-sm" aria-label="Drafts of others">
          {others.map(({ writerName, begunAt }) => (
            <li key={`${writerName} ${begunAt.toISOString()}`}>
              <strong>{writerName}</strong> has a draft of this recipe, begun at <ClockTime at={begunAt} withDay />.
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
