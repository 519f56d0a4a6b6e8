import { useState, type ReactElement, type SubmitEvent } from "react";
import type { LoggedReading } from "@/lib/model/log/logged-readings";
import { TextField } from "@/lib/ui/text-field";
import { useKeep } from "./use-keep";

/** Says of a reading that it does not count. It stays in the log, struck through, with the reason. */
export function VoidEntry({
  target,
  onClose,
}: {
  readonly target: LoggedReading;
  readonly onClose: () => void;
}): ReactElement {
  const { keep, problem } = useKeep(onClose);
  const [why, setWhy] = useState("");
  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    keep([{ kind: "void", targetId: target.id, seen: target.changes, why: why.trim() }]);
  }
  return (
    <form onSubmit={submit} noValidate className="flex flex-col gap-4">
      <p>The reading “{target.measured.entered}” stays in the log, struck through, and counts nowhere.</p>
      <TextField
        name="void-why"
        label="Why"
        hint="For instance: entered at the wrong brew."
        value={why}
        maxLength={500}
        onChange={(event) => setWhy(event.target.value)}
        error={problem ?? undefined}
      />
      <button type="submit" className="button day-button">
        It does not count
      </button>
    </form>
  );
}
