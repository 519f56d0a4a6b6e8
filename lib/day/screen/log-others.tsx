import type { ReactElement } from "react";
import type { BrewLog } from "@/lib/model/log/project-log";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { useDay } from "./day-context";

interface Line {
  readonly id: string;
  readonly at: number;
  readonly text: string;
  readonly actorName: string;
  readonly isSafe: boolean;
  readonly picture: string | null;
}

/** Notes, pictures, additions and heard alarms, the latest first. */
export function LogOthers(): ReactElement | null {
  const { log, space, brew } = useDay();
  const lines = linesOf(log, (photoId) => `/api/brew-day/${space}/${brew.id}/photos/${photoId}`);
  if (lines.length === 0) return null;
  return (
    <ul className="list-ruled mt-4">
      {lines.map(({ id, at, text, actorName, isSafe, picture }) => (
        <li key={id} className="py-2">
          <p>{text}</p>
          {picture === null || !isSafe ? null : <img src={picture} alt={text} loading="lazy" className="max-h-60" />}
          <p className="text-sm text-muted">
            <ClockTime at={new Date(at)} />, {actorName}, {isSafe ? "on the server" : "on this device only"}
          </p>
        </li>
      ))}
    </ul>
  );
}

function linesOf(log: BrewLog, pictureOf: (photoId: string) => string): readonly Line[] {
  const notes = log.notes.map((note) => line(note, note.content.text, null));
  const photos = log.photos.map((photo) =>
    line(photo, photo.content.caption === "" ? "Photo" : photo.content.caption, pictureOf(photo.content.photoId)),
  );
  const additions = log.additions.map((addition) => {
    const { name, amount, unit } = addition.content;
    return line(addition, `Added: ${name}, ${String(amount)} ${unit}`, null);
  });
  const heard = [...log.timers.values()].flatMap(({ timer, label, acknowledged }): Line[] => {
    if (acknowledged === null) return [];
    const { at, byName } = acknowledged;
    return [{ id: timer, at, text: `Alarm heard: ${label}`, actorName: byName, isSafe: true, picture: null }];
  });
  return [...notes, ...photos, ...additions, ...heard].sort((one, other) => other.at - one.at);
}

function line(
  logged: { readonly id: string; readonly at: number; readonly actorName: string; readonly receivedAt: string | null },
  text: string,
  picture: string | null,
): Line {
  const { id, at, actorName, receivedAt } = logged;
  return { id, at, text, actorName, isSafe: receivedAt !== null, picture };
}
