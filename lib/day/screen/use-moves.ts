import { useRef, useState } from "react";
import { openAlarms } from "../alarm/due-alarms";
import type { DayStep } from "../plan/day-plan";
import { begin, done, leaveOut, takeBack, withoutIdle } from "../plan/step-moves";
import { stepAct } from "../plan/step-events";
import { useDay } from "./day-context";
import { alarmWords } from "./step-words";
import { useOfNow } from "./use-now";

/** How long a tap can be taken back beside its button; afterwards in the list of the day. */
const UNDO_MS = 10_000;

export interface Moves {
  readonly begin: (step: DayStep) => void;
  readonly done: (step: DayStep) => void;
  /** Confirms one step and begins the next with the same tap. */
  readonly goOn: (from: DayStep, to: DayStep) => void;
  readonly leaveOut: (step: DayStep, why: string) => void;
  readonly takeBack: (step: DayStep) => void;
  readonly add: (title: string, minutes: number, after: string | null) => void;
  /** What the last tap did, while it can be undone here. */
  readonly undo: (() => void) | null;
  /** Why the last tap was not kept; null when it was. */
  readonly problem: string | null;
}

/** Everything that is done with steps, each kept on this device before the screen shows it. */
export function useMoves(): Moves {
  const { brew, day, log, now, present, write } = useDay();
  const [touched, setTouched] = useState<{ readonly steps: readonly DayStep[]; readonly at: number } | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const isWriting = useRef(false);
  const words = alarmWords(brew.equipment);
  const open = new Set(openAlarms(log.timers, now).map(({ timer }) => timer));

  function keep(contents: Parameters<typeof write>[0], steps: readonly DayStep[]): void {
    // The second tap of two would confirm the next step as well.
    if (isWriting.current) return;
    isWriting.current = true;
    write(withoutIdle(contents, open))
      .then(() => {
        setProblem(null);
        setTouched(steps.length === 0 ? null : { steps, at: Date.now() });
      })
      .catch((error: unknown) => setProblem(notKept(error)))
      .finally(() => {
        isWriting.current = false;
      });
  }

  const isUndoable = useOfNow((at) => touched !== null && at - touched.at < UNDO_MS);
  return {
    begin: (step) => keep(begin(day, step, present(), words), [step]),
    done: (step) => keep(done(day, step), [step]),
    goOn: (from, to) => keep([...done(day, from), ...begin(day, to, present(), words)], [from, to]),
    leaveOut: (step, why) => keep(leaveOut(day, step, why), [step]),
    takeBack: (step) => keep(takeBack(day, step), []),
    add: (title, minutes, after) =>
      keep([stepAct(`extra-${String(Date.now())}`, "added", { title, minutes, after })], []),
    undo:
      isUndoable && touched !== null
        ? () =>
            keep(
              touched.steps.flatMap((step) => takeBack(day, step)),
              [],
            )
        : null,
    problem,
  };
}

/** A full disk is the likeliest reason, and the one that somebody can do something about. */
export function notKept(error: unknown): string {
  const isFull = error instanceof DOMException && error.name === "QuotaExceededError";
  return isFull
    ? "Not kept: this device has no room left. Free some space and enter it again."
    : "Not kept on this device. Try again, and write it on paper if it stays so.";
}
