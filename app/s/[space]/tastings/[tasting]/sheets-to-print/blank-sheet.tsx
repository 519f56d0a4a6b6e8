import { SHEET_MAXIMA, type ScoreSheet } from "@/lib/calc/judging";

interface BlankSheetProps {
  readonly tasting: string;
  readonly flight: string;
  readonly judge: string;
  readonly entryNo: number;
  /** In the order of tasting. */
  readonly place: number;
  readonly places: number;
}

interface Part {
  readonly id: keyof ScoreSheet;
  readonly label: string;
  readonly about: string;
  readonly lines: number;
}

const PARTS: readonly Part[] = [
  { id: "aroma", label: "Aroma", about: "malt, hops, fermentation, other", lines: 4 },
  { id: "appearance", label: "Appearance", about: "colour, clarity, head", lines: 2 },
  { id: "flavour", label: "Flavour", about: "malt, hops, bitterness, balance, finish", lines: 5 },
  { id: "mouthfeel", label: "Mouthfeel", about: "body, carbonation, warmth, astringency", lines: 2 },
  { id: "overall", label: "Overall impression", about: "and what would make it better", lines: 4 },
];

/** An empty sheet of 50 points for one beer and one judge. */
export function BlankSheet({ tasting, flight, judge, entryNo, place, places }: BlankSheetProps) {
  return (
    <article className="blank-sheet">
      <h2>Entry {entryNo}</h2>
      <p>
        {tasting}; {flight}; judge {judge}; beer {place} of {places}
      </p>
      {PARTS.map(({ id, label, about, lines }) => (
        <section key={id} aria-label={`${label} of entry ${String(entryNo)} for ${judge}`}>
          <h3 className="flex justify-between gap-4">
            <span>
              {label} <span className="font-normal">({about})</span>
            </span>
            <span className="whitespace-nowrap">
              <span className="sheet-blank" /> of {SHEET_MAXIMA[id]}
            </span>
          </h3>
          {Array.from({ length: lines }, (_, i) => (
            <div key={i} className="sheet-line" />
          ))}
        </section>
      ))}
      <div className="mt-2 flex justify-between gap-4">
        <span>Faults and descriptors:</span>
        <strong className="whitespace-nowrap">
          Total <span className="sheet-blank" /> of {PARTS.reduce((sum, { id }) => sum + SHEET_MAXIMA[id], 0)}
        </strong>
      </div>
      <div className="sheet-line" />
    </article>
  );
}
