import { useImperativeHandle, useState, type ReactElement, type Ref } from "react";
import { SheetDialog } from "@/lib/ui/sheet-dialog";
import type { DayDatabase } from "../store/database";
import type { DaySession } from "../sync/day-session";
import type { Entry, OnEnter } from "./entry-bar";
import { NoteEntry } from "./note-entry";
import { PhotoEntry } from "./photo-entry";
import { ReadingEntry } from "./reading-entry";
import { TimerEntry } from "./timer-entry";
import { VoidEntry } from "./void-entry";

interface EntryDialogProps {
  /** Opens it. What is open is its own affair, so that the whole day is not drawn anew when it opens and closes. */
  readonly ref: Ref<OnEnter>;
  readonly session: DaySession;
  readonly database: DayDatabase;
}

/** The sheet in which something is entered. It closes when the entry is on this device. */
export function EntryDialog({ ref, session, database }: EntryDialogProps): ReactElement {
  const [entry, setEntry] = useState<Entry | null>(null);
  useImperativeHandle(ref, (): OnEnter => setEntry, []);
  const close = (): void => setEntry(null);
  return (
    <SheetDialog heading={entry === null ? null : headingOf(entry)} subject={entry} onClose={close}>
      {entry === null ? null : (
        <div className="brew-day">
          <Body entry={entry} onClose={close} session={session} database={database} />
        </div>
      )}
    </SheetDialog>
  );
}

interface BodyProps {
  readonly entry: Entry;
  readonly onClose: () => void;
  readonly session: DaySession;
  readonly database: DayDatabase;
}

function Body({ entry, onClose, session, database }: BodyProps): ReactElement {
  switch (entry.kind) {
    case "reading":
      return <ReadingEntry key={entry.point.quantity} {...entry} onClose={onClose} />;
    case "note":
      return <NoteEntry step={entry.step} onClose={onClose} />;
    case "timer":
      return <TimerEntry step={entry.step} onClose={onClose} />;
    case "photo":
      return <PhotoEntry step={entry.step} onClose={onClose} session={session} database={database} />;
    case "void":
      return <VoidEntry target={entry.target} onClose={onClose} />;
  }
}

function headingOf(entry: Entry): string {
  switch (entry.kind) {
    case "reading":
      return entry.target === null ? entry.point.label : `Correct: ${entry.point.label}`;
    case "note":
      return "Note";
    case "timer":
      return "Timer";
    case "photo":
      return "Photo";
    case "void":
      return "Does not count";
  }
}
