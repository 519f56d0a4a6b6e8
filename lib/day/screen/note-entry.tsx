import { useState, type ReactElement, type SubmitEvent } from "react";
import { Field } from "@/lib/ui/field";
import { fieldIds } from "@/lib/ui/field-ids";
import { useKeep } from "./use-keep";

const LONGEST = 2000;

/** A note for the log, of the step that goes on. */
export function NoteEntry({
  step,
  onClose,
}: {
  readonly step: string | null;
  readonly onClose: () => void;
}): ReactElement {
  const { keep, problem } = useKeep(onClose);
  const [text, setText] = useState("");
  const [error, setError] = useState<string | undefined>(undefined);
  const ids = fieldIds("day-text");
  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    if (text.trim() === "") setError("Note is empty");
    else keep([{ kind: "note", text: text.trim(), step }]);
  }
  return (
    <form onSubmit={submit} noValidate className="flex flex-col gap-4">
      <Field name="day-text" label="Note" error={error ?? problem ?? undefined}>
        <textarea
          id={ids.control}
          name="day-text"
          className="input"
          rows={5}
          maxLength={LONGEST}
          value={text}
          aria-invalid={error === undefined ? undefined : true}
          aria-describedby={error === undefined ? undefined : ids.error}
          onChange={(event) => setText(event.target.value)}
        />
      </Field>
      <button type="submit" className="button day-button">
        Keep it
      </button>
    </form>
  );
}
