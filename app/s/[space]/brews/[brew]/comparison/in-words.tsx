import type { LedgerComparison, QuantityCauses } from "@/lib/calc/compare";
import { differenceSentence } from "@/lib/model/difference-sentence";
import type { Preferences } from "@/lib/model/preferences";
import { differenceAmount } from "@/lib/ui/brew/difference-amount";
import { fixedDigits } from "@/lib/ui/fixed-digits";

interface InWordsProps {
  readonly comparison: LedgerComparison;
  readonly causes: readonly QuantityCauses[];
  readonly preferences: Preferences;
}

/** What the figures say, in sentences. Every number of them stands in a table below. */
export function InWords({ comparison, causes, preferences }: InWordsProps) {
  const { balance, next } = comparison;
  return (
    <section aria-labelledby="in-words" className="my-6">
      <h2 id="in-words">In words</h2>
      <div className="mt-2 flex flex-col gap-2">
        {causes.map((each) => (
          <p key={each.quantity}>{differenceSentence(each, differenceAmount(each, preferences).say)}</p>
        ))}
        <p>
          {balance.words}
          {balance.df === 0 ? null : (
            <span className="text-muted">
              {" "}
              (χ² {fixedDigits(balance.chiSquared, 1)} with {balance.df} {balance.df === 1 ? "degree" : "degrees"} of
              freedom)
            </span>
          )}
        </p>
        {next === null ? null : <p>{next.words}</p>}
      </div>
    </section>
  );
}
