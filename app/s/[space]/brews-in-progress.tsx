import type { BrewSummary } from "@/lib/model/brew";
import { EmptyState } from "@/lib/ui/empty-state";
import { BrewTable } from "./brew-table";

interface BrewsInProgressProps {
  readonly home: string;
  readonly brews: readonly BrewSummary[];
  readonly isClub: boolean;
}

/** Batches that are under way, apart from those brewed together. */
export function BrewsInProgress({ home, brews, isClub }: BrewsInProgressProps) {
  const underWay = brews.filter((brew) => brew.sharedBrewId === null && brew.state !== "closed");
  return (
    <section aria-labelledby="brews">
      <h2 id="brews" className="mb-3">
        {isClub ? "Brewed alone" : "Under way"}
      </h2>
      {underWay.length === 0 ? (
        <EmptyState>
          No batch is under way. Open a recipe, choose a kettle, and plan the brew there: its run sheet comes with it.
        </EmptyState>
      ) : (
        <BrewTable home={home} caption="Batches under way" brews={underWay} withTitle />
      )}
    </section>
  );
}
