import Link from "next/link";
import { choiceStanding, sheetStanding, type JudgeSheet } from "@/lib/model/tasting/judge-sheet";

interface PaperListProps {
  readonly here: string;
  readonly name: string;
  readonly judged: Pick<JudgeSheet, "flights" | "entries">;
}

/** What a judge was served, and whether it is in. */
export function PaperList({ here, name, judged: { flights, entries } }: PaperListProps) {
  return (
    <ul aria-label={`Sheets of ${name}`} className="list-ruled mt-3">
      {flights.flatMap((flight) => {
        const at = `${here}&flight=${String(flight.flightNo)}`;
        if (flight.kind !== "scored") {
          const isIn = choiceStanding(entries, flight.flightNo).isHandedIn;
          return [
            <Line key={at} href={at} text={`${flight.title}: glasses ${flight.glasses.join(", ")}`} isIn={isIn} />,
          ];
        }
        return flight.entries.map(({ entryNo }) => (
          <Line
            key={`${at} ${String(entryNo)}`}
            href={`${at}&entry=${String(entryNo)}`}
            text={`${flight.title}: entry ${String(entryNo)}`}
            isIn={sheetStanding(entries, entryNo).handedIn !== null}
          />
        ));
      })}
    </ul>
  );
}

function Line({ href, text, isIn }: { readonly href: string; readonly text: string; readonly isIn: boolean }) {
  return (
    <li className="flex flex-wrap items-center justify-between gap-x-4">
      <Link className="target" href={href}>
        {text}
      </Link>
      <span>{isIn ? "in" : "missing"}</span>
    </li>
  );
}
