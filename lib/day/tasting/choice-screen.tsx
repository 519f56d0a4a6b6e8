import { useState, type ReactElement } from "react";
import { choiceStanding, type ServedFlight, type TastingEntry } from "@/lib/model/tasting/judge-sheet";
import type { Choice } from "@/lib/model/tasting/sheet";
import type { JudgingSession } from "../sync/judging-session";
import { ChoiceFields } from "./choice-fields";
import { EnteredByOther } from "./entered-by-other";

interface ChoiceScreenProps {
  readonly session: JudgingSession;
  readonly entries: readonly TastingEntry[];
  readonly flight: ServedFlight;
  readonly kind: "triangle" | "duo-trio";
  readonly mayWrite: boolean;
}

/** Nothing chosen yet: no glass has this number. */
const NOTHING: Choice = { glassNo: 0, note: "" };

/** Three glasses: which is the odd one, or which is like the reference? */
export function ChoiceScreen({ session, entries, flight, kind, mayWrite }: ChoiceScreenProps): ReactElement {
  const standing = choiceStanding(entries, flight.flightNo);
  const [isChanging, setChanging] = useState(false);
  const isRead = !mayWrite || (standing.isHandedIn && !isChanging);
  const { payload } = standing;
  return (
    <>
      <nav aria-label="Glasses" className="judging-turning no-print">
        <a className="target" href="#all">
          ‹ All glasses
        </a>
      </nav>
      <h1>{flight.title}</h1>
      <Question kind={kind} glasses={flight.glasses} />
      <EnteredByOther last={standing.last} session={session} />
      {isRead ? (
        <>
          <p className="judging-total mt-4">
            {payload === null ? "Nothing chosen" : `Glass ${String(payload.glassNo)}`},{" "}
            {standing.isHandedIn ? "handed in" : "not handed in"}
          </p>
          {payload === null || payload.note === "" ? null : <p className="whitespace-pre-line">{payload.note}</p>}
          {mayWrite ? (
            <button type="button" className="button button-quiet mt-4" onClick={() => setChanging(true)}>
              Change it
            </button>
          ) : null}
        </>
      ) : (
        <ChoiceFields
          kept={payload ?? NOTHING}
          glasses={kind === "duo-trio" ? flight.glasses.slice(1) : flight.glasses}
          save={(choice, isFinal) => session.write(flight.flightNo, { kind: "choice", isFinal, payload: choice })}
          onHandedIn={() => setChanging(false)}
        />
      )}
    </>
  );
}

function Question({
  kind,
  glasses,
}: {
  readonly kind: "triangle" | "duo-trio";
  readonly glasses: readonly number[];
}): ReactElement {
  const [first = 0] = glasses;
  if (kind === "triangle") {
    return (
      <p className="mt-2">
        Two of these three beers are the same. Taste {glasses.join(", then ")}, in this order. Which one is the odd one?
        Choose one even if you have to guess.
      </p>
    );
  }
  return (
    <p className="mt-2">
      Glass {first} is the reference. Taste {glasses.join(", then ")}, in this order. Which of the last two is the same
      beer as the reference? Choose one even if you have to guess.
    </p>
  );
}
