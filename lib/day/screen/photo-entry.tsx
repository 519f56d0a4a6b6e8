import { useState, type ChangeEvent, type ReactElement } from "react";
import { fieldIds } from "@/lib/ui/field-ids";
import { newId } from "@/lib/ui/brew/new-id";
import { TextField } from "@/lib/ui/text-field";
import type { DayDatabase } from "../store/database";
import { keepPhoto } from "../store/photos";
import type { DaySession } from "../sync/day-session";
import { useDay } from "./day-context";
import { notKept } from "./use-moves";
import { smallPicture } from "./small-picture";

interface PhotoEntryProps {
  readonly step: string | null;
  readonly onClose: () => void;
  readonly session: DaySession;
  readonly database: DayDatabase;
}

/** A picture for the log, made small on this device and kept here until the server has it. */
export function PhotoEntry({ step, onClose, session, database }: PhotoEntryProps): ReactElement {
  const { space, brew, write } = useDay();
  const [caption, setCaption] = useState("");
  const [problem, setProblem] = useState<string | null>(null);

  async function keep(file: File): Promise<void> {
    const picture = await smallPicture(file);
    if (picture === null) {
      setProblem(`“${file.name.slice(0, 60)}” is not a picture that this browser can draw.`);
      return;
    }
    const { sheet } = session.snapshot();
    if (sheet === null) return;
    const photoId = newId();
    await keepPhoto(database, { id: photoId, space, brewId: brew.id, userId: sheet.me.id, picture, refusal: null });
    await write([{ kind: "photo", photoId, caption: caption.trim(), step }]);
    onClose();
  }

  function choose({ target }: ChangeEvent<HTMLInputElement>): void {
    const [file] = target.files ?? [];
    if (file !== undefined) keep(file).catch((error: unknown) => setProblem(notKept(error)));
  }

  return (
    <div className="flex flex-col gap-4">
      <TextField
        name="photo-caption"
        label="What it shows"
        value={caption}
        maxLength={300}
        onChange={(event) => setCaption(event.target.value)}
      />
      <PictureField onChoose={choose} />
      {problem === null ? null : (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </div>
  );
}

function PictureField({
  onChoose,
}: {
  readonly onChoose: (event: ChangeEvent<HTMLInputElement>) => void;
}): ReactElement {
  const ids = fieldIds("day-photo");
  return (
    <div className="field">
      <label className="field-label" htmlFor={ids.control}>
        Take or choose a picture
      </label>
      <span className="field-hint" id={ids.hint}>
        Place and time that the camera wrote into it are not sent.
      </span>
      <input
        id={ids.control}
        type="file"
        accept="image/*"
        capture="environment"
        className="input"
        aria-describedby={ids.hint}
        onChange={onChoose}
      />
    </div>
  );
}
