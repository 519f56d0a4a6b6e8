import type { ReactElement } from "react";
import {
  choiceStanding,
  sheetStanding,
  type JudgeSheet,
  type ServedFlight,
  type TastingEntry,
} from "@/lib/model/tasting/judge-sheet";
import { pointsSoFar, sheetTotal, type Sheet } from "@/lib/model/tasting/sheet";
import { entryHash, glassesHash } from "./use-place";

const STATE_WORDS: Readonly<Record<JudgeSheet["tasting"]["state"], string | null>> = {
  draft: "This tasting is still being prepared. Your glasses show here when it is open.",
  open: null,
  closed: "This tasting is closed: your sheets can be read, and nothing more is written.",
  revealed: "This tasting has been revealed: see the results in your club.",
};

interface JudgingListProps {
  readonly sheet: JudgeSheet;
  readonly entries: readonly TastingEntry[];
}

/** Every glass that a judge is served, in the order of tasting, with what is done and what is not. */
export function JudgingList({ sheet, entries }: JudgingListProps): ReactElement {
  const { tasting, space, flights } = sheet;
  const words = STATE_WORDS[tasting.state];
  return (
    <>
      <h1>{tasting.title}</h1>
      <p className="text-muted">Judged by {sheet.me.name}. Taste in this order; a beer’s number says nothing of it.</p>
      {words === null ? null : <p className="notice mt-4">{words}</p>}
      {flights.map((flight) => (
        <section key={flight.flightNo} aria-labelledby={`flight-${String(flight.flightNo)}`} className="mt-6">
          <h2 id={`flight-${String(flight.flightNo)}`}>{flight.title}</h2>
          <FlightLines flight={flight} entries={entries} />
        </section>
      ))}
      <p className="mt-8">
        <a className="target underline" href={`/s/${space.slug}/tastings/${tasting.id}`}>
          The tasting in {space.name}
        </a>
      </p>
    </>
  );
}

function FlightLines({
  flight,
  entries,
}: {
  readonly flight: ServedFlight;
  readonly entries: readonly TastingEntry[];
}): ReactElement {
  if (flight.kind !== "scored") {
    const { isHandedIn, payload } = choiceStanding(entries, flight.flightNo);
    const words = isHandedIn ? "handed in" : payload === null ? "not begun" : "chosen, not handed in";
    return (
      <ul className="judging-lines">
        <Line
          href={glassesHash(flight.flightNo)}
          name={`Glasses ${flight.glasses.join(", ")}`}
          {...{ words, isHandedIn }}
        />
      </ul>
    );
  }
  return (
    <ol className="judging-lines">
      {flight.entries.map(({ entryNo, style }) => {
        const { isHandedIn, payload } = sheetStanding(entries, entryNo);
        const href = entryHash(flight.flightNo, entryNo);
        return (
          <Line
            key={entryNo}
            name={`Entry ${String(entryNo)}`}
            words={sheetWords(payload, isHandedIn)}
            {...{ href, style, isHandedIn }}
          />
        );
      })}
    </ol>
  );
}

function sheetWords(payload: Sheet | null, isHandedIn: boolean): string {
  if (payload === null) return "not begun";
  const total = sheetTotal(payload);
  if (isHandedIn && total !== null) return `${String(total)} of 50, handed in`;
  return `${String(total ?? pointsSoFar(payload))} of 50 ${total === null ? "so far" : ", not handed in"}`.replace(
    " ,",
    ",",
  );
}

function Line(a: {
  readonly href: string;
  readonly name: string;
  readonly words: string;
  readonly isHandedIn: boolean;
  readonly style?: string | null;
}): ReactElement {
  return (
    <li>
      <a className="judging-line" href={a.href}>
        <span>
          <strong>{a.name}</strong>
          {a.style === null || a.style === undefined ? null : <span className="block text-muted">{a.style}</span>}
        </span>
        <span className={a.isHandedIn ? undefined : "font-semibold"}>
          {a.isHandedIn ? "✓ " : ""}
          {a.words}
        </span>
      </a>
    </li>
  );
}
