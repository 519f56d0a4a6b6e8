import { BREW_STATES, type BrewState } from "@/lib/model/brew";

/** Where the brew is on its way; the present state is said, not only shown. */
export function StateLine({ state }: { readonly state: BrewState }) {
  return (
    <ol aria-label="Where the brew is" className="flex flex-wrap gap-x-2">
      {BREW_STATES.map((each, i) => (
        <li key={each} aria-current={each === state ? "step" : undefined}>
          {i === 0 ? null : (
            <span aria-hidden className="mr-2 text-muted">
              →
            </span>
          )}
          {each === state ? <strong>{each}</strong> : <span className="text-muted">{each}</span>}
        </li>
      ))}
    </ol>
  );
}
