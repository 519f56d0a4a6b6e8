import type { DraftSummary } from "@/lib/model/recipe-draft";
import { ClockTime } from "@/lib/ui/brew/clock-time";

/** Who else is writing on this recipe: whoever publishes second will be told, and nothing is overwritten. */
export function OtherDrafts({ drafts }: { readonly drafts: readonly DraftSummary[] }) {
  const others = drafts.filter(({ isOwn }) => !isOwn);
  if (others.length === 0) return null;
  return (
    <ul className="no-print mb-3 text-sm" aria-label="Drafts of others">
      {others.map(({ writerName, begunAt }) => (
        <li key={`${writerName} ${begunAt.toISOString()}`}>
          <strong>{writerName}</strong> has a draft of this recipe, begun at <ClockTime at={begunAt} withDay />.
        </li>
      ))}
    </ul>
  );
}
