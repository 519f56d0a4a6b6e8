import type { Preferences } from "@/lib/model/preferences";
import { ALPHA, WANTED, type DifferenceResult } from "@/lib/model/tasting/results-difference";
import { FLIGHT_KIND_WORDS } from "@/lib/model/tasting/tasting";
import { Statistic } from "@/lib/ui/across/statistic";
import { ExplainedCall } from "@/lib/ui/explained-call";
import { Quantity } from "@/lib/ui/quantity";

const CALLS = { triangle: "judging/triangleProbability", "duo-trio": "judging/duoTrioProbability" } as const;

interface DifferenceSectionProps {
  readonly result: DifferenceResult;
  readonly preferences: Preferences;
}

/** Whether two beers could be told apart. */
export function DifferenceSection({ result, preferences }: DifferenceSectionProps) {
  const { flight, test, answers, right, weighed, minimumRight, required } = result;
  const id = `flight-${String(flight.flightNo)}`;
  const beers = flight.entries.map(({ entryNo, beer }) => `${String(entryNo)} ${beer}`).join(" and ");
  const fraction = { dimension: "fraction", preferences } as const;
  return (
    <section aria-labelledby={id} className="mt-8">
      <h2 id={id}>{flight.title}</h2>
      <p className="mt-2">
        A {FLIGHT_KIND_WORDS[test]} of {beers}. {answers} of {flight.judges.length} judges answered, {right} of them
        rightly.
      </p>
      {weighed === null ? null : (
        <>
          <ul className="mt-2 list-disc ps-5">
            <li>
              <strong>
                {minimumRight !== null && right >= minimumRight
                  ? "The beers can be told apart"
                  : "That the beers can be told apart is not shown"}
              </strong>
              : by guessing alone as many are right with probability <Statistic value={weighed.p} kind="probability" />.
            </li>
            <li>
              {minimumRight === null
                ? "So few answers would show no difference if all of them were right."
                : `Of ${String(answers)} answers, ${String(minimumRight)} right ones are needed to show a difference with a risk of ${String(ALPHA * 100)} %.`}
            </li>
            <li>
              Share who can tell:{" "}
              <Quantity {...fraction} value={weighed.proportionOfDiscriminators} interval={weighed} />
            </li>
            {required.ok ? (
              <li>
                To find that {String(WANTED.proportionOfDiscriminators * 100)} of 100 can tell, and miss it in no more
                than {String(WANTED.beta * 100)} of 100 such tests, {required.assessors} judges are needed
                {answers < required.assessors
                  ? "; with fewer, no difference found does not mean that there is none."
                  : "."}
              </li>
            ) : null}
          </ul>
          <ExplainedCall id={CALLS[test]} args={[{ n: answers, correct: right }]} />
          <ExplainedCall id="judging/requiredAssessors" args={[{ ...WANTED, test }]} />
        </>
      )}
    </section>
  );
}
