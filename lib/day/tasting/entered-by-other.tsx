import type { ReactElement } from "react";
import type { TastingEntry } from "@/lib/model/tasting/judge-sheet";
import type { JudgingSession } from "../sync/judging-session";

interface EnteredByOtherProps {
  /** What was last written of a sheet or an answer; null before anything was. */
  readonly last: TastingEntry | null;
  readonly session: JudgingSession;
}

/** Tells a judge that somebody else wrote this, from paper. */
export function EnteredByOther({ last, session }: EnteredByOtherProps): ReactElement | null {
  if (last === null || last.actorId === session.snapshot().sheet?.me.id) return null;
  return <p className="notice mt-2">Entered from your paper sheet by {last.actorName}.</p>;
}
