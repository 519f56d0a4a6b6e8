import type { LedgerComparison } from "@/lib/calc/compare";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { intervalOfSd } from "@/lib/ui/brew/interval-of-sd";
import { Notice } from "@/lib/ui/notice";
import { Quantity } from "@/lib/ui/quantity";

interface SuspectListProps {
  readonly suspects: LedgerComparison["suspects"];
  readonly preferences: Preferences;
}

/** The readings that cannot be right, with what they should have been. */
export function SuspectList({ suspects, preferences }: SuspectListProps) {
  if (suspects.length === 0) return null;
  return (
    <section aria-label="Doubtful readings" className="my-6 flex flex-col gap-3">
      {suspects.map(({ quantity, measured, shouldBe, shouldBeSd, words }) => {
        const { label, dimension } = QUANTITIES[quantity];
        return (
          <Notice key={quantity} kind="attention">
            <p>
              <strong>
                {label} <Quantity value={measured} dimension={dimension} preferences={preferences} /> cannot be right.
              </strong>{" "}
              {words} It should have been about{" "}
              <Quantity
                value={shouldBe}
                interval={intervalOfSd(shouldBe, shouldBeSd)}
                dimension={dimension}
                preferences={preferences}
              />
              .
            </p>
            <p className="mt-1">Nothing was changed: the reading stays in the log, and a new one would replace it.</p>
          </Notice>
        );
      })}
    </section>
  );
}
