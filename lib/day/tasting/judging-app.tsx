import { useEffect, useSyncExternalStore, type ReactElement } from "react";
import type { JudgeSheet, ServedFlight } from "@/lib/model/tasting/judge-sheet";
import type { JudgingSession, JudgingState } from "../sync/judging-session";
import { ChoiceScreen } from "./choice-screen";
import { JudgingList } from "./judging-list";
import { JudgingStatus, SafetyLine } from "./judging-status";
import { NothingKept } from "../screen/nothing-kept";
import { JUDGING_WORDS } from "./judging-words";
import { SheetScreen } from "./sheet-screen";
import { usePlace, type Place } from "./use-place";

/** A judge's sheets of one tasting on this device. */
export function JudgingApp({ session }: { readonly session: JudgingSession }): ReactElement {
  const state = useSyncExternalStore(session.subscribe, session.snapshot);
  const place = usePlace();
  const { sheet } = state;
  const theme = sheet?.preferences.theme;
  useEffect(() => {
    if (theme !== undefined) document.documentElement.dataset["theme"] = theme;
  }, [theme]);
  const title = sheet?.tasting.title;
  useEffect(() => {
    if (title !== undefined) document.title = `Judging: ${title} · Gylebook`;
  }, [title]);

  if (sheet === null) {
    return <NothingKept words={JUDGING_WORDS} connection={state.connection} onRetry={() => void session.refresh()} />;
  }
  return (
    <main id="content" className="page judging" tabIndex={-1}>
      <SafetyLine state={state} session={session} />
      <Screen {...{ state, session, sheet, place }} />
      <JudgingStatus state={state} session={session} />
    </main>
  );
}

interface ScreenProps {
  readonly state: JudgingState;
  readonly session: JudgingSession;
  readonly sheet: JudgeSheet;
  readonly place: Place;
}

function Screen({ state, session, sheet, place }: ScreenProps): ReactElement {
  const flight = place.kind === "list" ? undefined : flightOf(sheet, place.flightNo);
  const { entries } = state;
  const mayWrite = sheet.tasting.state === "open";
  if (place.kind === "entry" && flight !== undefined) {
    const at = flight.entries.findIndex(({ entryNo }) => entryNo === place.entryNo);
    if (at !== -1) {
      // A sheet of its own for each entry: what is being typed into one is never of another.
      return <SheetScreen key={place.entryNo} {...{ session, entries, flight, at, mayWrite }} />;
    }
  }
  if (place.kind === "glasses" && flight !== undefined && flight.kind !== "scored") {
    return <ChoiceScreen key={flight.flightNo} {...{ session, entries, flight, mayWrite }} kind={flight.kind} />;
  }
  return <JudgingList sheet={sheet} entries={entries} />;
}

function flightOf(sheet: JudgeSheet, flightNo: number): ServedFlight | undefined {
  return sheet.flights.find((flight) => flight.flightNo === flightNo);
}
