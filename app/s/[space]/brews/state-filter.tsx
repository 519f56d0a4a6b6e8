import Link from "next/link";
import { BREW_STATES, type BrewState } from "@/lib/model/brew";
import type { BrewRegisterEntry } from "@/lib/model/brew-register";

interface StateFilterProps {
  readonly home: string;
  readonly entries: readonly BrewRegisterEntry[];
  readonly chosen: BrewState | null;
}

/** Which batches the list shows, by where they are; the choice belongs to the address. */
export function StateFilter({ home, entries, chosen }: StateFilterProps) {
  const choices = BREW_STATES.map((state) => ({
    state,
    count: entries.filter((entry) => entry.state === state).length,
  }));
  return (
    <nav aria-label="Where they are" className="local-nav mb-4">
      <ul className="flex flex-wrap gap-x-5">
        <li>
          <Link href={`${home}/brews`} aria-current={chosen === null ? "true" : undefined}>
            all ({entries.length})
          </Link>
        </li>
        {choices.map(({ state, count }) => (
          <li key={state}>
            <Link
              href={`${home}/brews?state=${encodeURIComponent(state)}`}
              aria-current={chosen === state ? "true" : undefined}
            >
              {state} ({count})
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
