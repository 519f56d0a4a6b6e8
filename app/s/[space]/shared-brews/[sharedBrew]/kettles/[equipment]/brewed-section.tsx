import { rulesInWords, type SharedBrewRules } from "@/lib/model/shared-brew-rules";
import type { Member } from "@/lib/server/session";
import type { BrewedHere } from "@/lib/server/shared-brews/find-sheet";
import { Quantity } from "@/lib/ui/quantity";
import { RuleTable } from "./rule-table";
import { SheetAmounts } from "./sheet-amounts";

interface BrewedSectionProps {
  readonly member: Member;
  readonly brewed: BrewedHere;
  readonly rules: SharedBrewRules;
}

/** What comes out on this kettle: each rule beside its figure, how long the day is, and what to weigh out. */
export function BrewedSection({ member, brewed, rules }: BrewedSectionProps) {
  const { preferences } = member;
  const { dayMinutes } = brewed;
  return (
    <>
      <section aria-labelledby="rules" className="mt-8">
        <h2 id="rules" className="mb-2">
          Rules of the plan
        </h2>
        <ul className="mb-4 list-disc pl-5">
          {rulesInWords(rules).map((words) => (
            <li key={words}>{words}.</li>
          ))}
        </ul>
        <RuleTable results={brewed.results} preferences={preferences} />
      </section>
      <section aria-labelledby="amounts" className="mt-8">
        <h2 id="amounts" className="mb-2">
          What to weigh out
        </h2>
        {dayMinutes === null ? null : (
          <p className="mb-3">
            The brew day takes{" "}
            <Quantity value={dayMinutes.value} interval={dayMinutes} dimension="minutes" preferences={preferences} />.
            Its place in the ledger below explains it.
          </p>
        )}
        <SheetAmounts recipe={brewed.recipe} preferences={preferences} />
      </section>
    </>
  );
}
