import type { ForcedChoice } from "@/lib/calc/judging";

interface BlankTestProps {
  readonly tasting: string;
  readonly flight: string;
  readonly judge: string;
  readonly kind: ForcedChoice;
  /** Numbers of the glasses in the order of tasting. */
  readonly glasses: readonly number[];
}

/** An empty answer of one judge to a triangle or duo-trio test. */
export function BlankTest({ tasting, flight, judge, kind, glasses }: BlankTestProps) {
  const [reference, ...others] = glasses;
  const chosen = kind === "triangle" ? glasses : others;
  return (
    <article className="blank-sheet">
      <h2>{flight}</h2>
      <p>
        {tasting}; judge {judge}
      </p>
      <p className="mt-2">
        {kind === "triangle"
          ? "Two of the three glasses hold the same beer. Taste from left to right and tick the odd one; if you cannot tell, guess."
          : `Glass ${String(reference)} is the reference. Taste from left to right and tick the glass that holds the same beer; if you cannot tell, guess.`}
      </p>
      <ul className="mt-4 flex flex-wrap gap-8">
        {chosen.map((glass) => (
          <li key={glass} className="text-xl">
            <span className="sheet-box" /> {glass}
          </li>
        ))}
      </ul>
      <p className="mt-4">What told them apart:</p>
      {Array.from({ length: 4 }, (_, i) => (
        <div key={i} className="sheet-line" />
      ))}
    </article>
  );
}
