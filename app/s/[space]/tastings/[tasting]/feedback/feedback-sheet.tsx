import Link from "next/link";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { descriptorMeaning, descriptorName, isFault } from "@/lib/model/tasting/descriptors";
import type { Feedback, SeatSheet } from "@/lib/model/tasting/results-feedback";
import { partMaximum, SHEET_PART_NAMES, SHEET_PARTS, STRENGTH_NAMES } from "@/lib/model/tasting/sheet";
import { Quantity } from "@/lib/ui/quantity";

interface FeedbackSheetProps {
  readonly feedback: Feedback;
  readonly home: string;
  readonly preferences: Preferences;
}

/** What the judges say of one beer; each starts a page on paper. */
export function FeedbackSheet({ feedback, home, preferences }: FeedbackSheetProps) {
  const { entry, sheets, found } = feedback;
  const id = `entry-${String(entry.entryNo)}`;
  return (
    <article aria-labelledby={id} className="feedback-sheet mt-8">
      <h2 id={id}>
        {entry.entryNo} {entry.beer}
      </h2>
      <p className="text-muted">
        {entry.brewer === "" ? "Brewer not named" : entry.brewer}; {feedback.flightTitle}
        {entry.brewId === null ? null : (
          <>
            ;{" "}
            <Link className="target no-print" href={`${home}/brews/${entry.brewId}`}>
              its brew
            </Link>
          </>
        )}
      </p>
      <Standing feedback={feedback} preferences={preferences} />
      <FigureLines feedback={feedback} preferences={preferences} />
      {found.length === 0 ? null : (
        <>
          <h3 className="mt-4">What was found</h3>
          <ul className="list-disc ps-5">
            {found.map(({ word, judges, strongest }) => (
              <li key={word}>
                {descriptorName(word)}, by {judges} of {sheets.length}, {STRENGTH_NAMES[strongest]} at most:{" "}
                {descriptorMeaning(word)}
                {isFault(word) ? " (a fault where the style does not ask for it)" : ""}
              </li>
            ))}
          </ul>
        </>
      )}
      <h3 className="mt-4">Notes</h3>
      {sheets.length === 0 ? (
        <p>No sheet was handed in.</p>
      ) : (
        sheets.map((each) => <SeatNotes key={each.seat} seat={each} />)
      )}
    </article>
  );
}

function Standing({ feedback, preferences }: Omit<FeedbackSheetProps, "home">) {
  const { result, entries, means, sheets } = feedback;
  const points = { dimension: "points", preferences } as const;
  return (
    <>
      <p className="mt-2">
        {result.adjusted === null ? (
          <>
            Raw mean: <Quantity {...points} value={result.rawMean} reason="no sheet was handed in" />
          </>
        ) : (
          <>
            Adjusted mean: <Quantity {...points} value={result.adjusted.adjusted} interval={result.adjusted} /> of 50
          </>
        )}
        , from {sheets.length} sheets.
        {result.rank === null
          ? ""
          : ` Rank ${String(result.rank)} of ${String(entries)}${result.isTied ? ", tied" : ""}.`}
      </p>
      {means === null ? null : (
        <dl className="mt-2">
          {SHEET_PARTS.map((part) => (
            <div key={part} className="flex flex-wrap justify-between gap-x-4 border-b border-rule py-1">
              <dt>{SHEET_PART_NAMES[part]}</dt>
              <dd>
                <Quantity {...points} value={means[part]} /> of {partMaximum(part)}
              </dd>
            </div>
          ))}
        </dl>
      )}
    </>
  );
}

const FROM = { measured: "measured", computed: "computed", stated: "as its brewer says" } as const;

function FigureLines({ feedback, preferences }: Omit<FeedbackSheetProps, "home">) {
  const { figures } = feedback.entry;
  if (figures.length === 0) return null;
  return (
    <>
      <h3 className="mt-4">The beer in figures</h3>
      <ul className="list-disc ps-5">
        {figures.map(({ quantity, value, interval, from }) => (
          <li key={quantity}>
            {QUANTITIES[quantity].label}:{" "}
            <Quantity {...{ value, interval, preferences }} dimension={QUANTITIES[quantity].dimension} />, {FROM[from]}
          </li>
        ))}
      </ul>
    </>
  );
}

function SeatNotes({ seat: { seat, total, sheet } }: { readonly seat: SeatSheet }) {
  const noted = SHEET_PARTS.filter((part) => sheet.notes[part] !== "");
  return (
    <div className="mt-2">
      <p className="font-semibold">
        Seat {seat}: {String(total)} of 50
      </p>
      {noted.length === 0 ? <p className="text-muted">No notes.</p> : null}
      <dl>
        {noted.map((part) => (
          <div key={part}>
            <dt className="text-muted">
              {SHEET_PART_NAMES[part]}, {String(sheet.scores[part])} of {partMaximum(part)}
            </dt>
            <dd className="whitespace-pre-line">{sheet.notes[part]}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
