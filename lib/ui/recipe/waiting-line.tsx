import type { ReactElement } from "react";

const MOST_SHOWN = 3;

/** Says why the numbers are older than what stands in the fields. It keeps its place, so that nothing jumps. */
export function WaitingLine({ waitingFor }: { readonly waitingFor: readonly string[] }): ReactElement {
  const more = waitingFor.length - MOST_SHOWN;
  return (
    <p className="min-h-6 max-w-none text-sm">
      {waitingFor.length === 0 ? null : (
        <span className="text-accent">
          <strong>Last numbers, waiting for:</strong> {waitingFor.slice(0, MOST_SHOWN).join("; ")}
          {more > 0 ? `; and ${more} more` : ""}.
        </span>
      )}
    </p>
  );
}
