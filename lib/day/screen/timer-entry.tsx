import { useState, type ReactElement, type SubmitEvent } from "react";
import { NumberField } from "@/lib/ui/number-field";
import { TextField } from "@/lib/ui/text-field";
import { timerAct } from "../plan/step-events";
import { useDay } from "./day-context";
import { useKeep } from "./use-keep";

const LONGEST_MIN = 2880;
const QUICK = [1, 5, 10, 15, 30, 60] as const;
const MINUTE_MS = 60_000;

/** A timer of the brewer's own. What is kept is the instant at which it rings. */
export function TimerEntry({
  step,
  onClose,
}: {
  readonly step: string | null;
  readonly onClose: () => void;
}): ReactElement {
  const { present } = useDay();
  const { keep, problem } = useKeep(onClose);
  const [label, setLabel] = useState("Timer");
  const [length, setLength] = useState("");
  const [error, setError] = useState<string | undefined>(undefined);

  function set(minutes: number): void {
    const dueAt = new Date(present() + minutes * MINUTE_MS).toISOString();
    const name = label.trim() === "" ? "Timer" : label.trim().slice(0, 120);
    keep([timerAct(`own-${String(Date.now())}`, "set", { label: name, dueAt, step })]);
  }

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const minutes = Number(length.replace(",", "."));
    if (length.trim() !== "" && minutes > 0 && minutes <= LONGEST_MIN) set(minutes);
    else setError(`Length “${length}” is not a number above 0 and up to ${String(LONGEST_MIN)} min`);
  }

  return (
    <form onSubmit={submit} noValidate className="flex flex-col gap-4">
      <TextField
        name="timer-label"
        label="What for"
        value={label}
        maxLength={120}
        onChange={(event) => setLabel(event.target.value)}
      />
      <Quick onSet={set} />
      <NumberField
        name="timer-length"
        label="Another length"
        unit="min"
        value={length}
        onChange={(event) => setLength(event.target.value)}
        error={error ?? problem ?? undefined}
      />
      <button type="submit" className="button day-button">
        Start the timer
      </button>
    </form>
  );
}

/** The usual lengths, each one tap. */
function Quick({ onSet }: { readonly onSet: (minutes: number) => void }): ReactElement {
  return (
    <div role="group" aria-label="Start at once" className="flex flex-wrap gap-3">
      {QUICK.map((minutes) => (
        <button
          key={minutes}
          type="button"
          className="button button-quiet day-button-small"
          onClick={() => onSet(minutes)}
        >
          {minutes} min
        </button>
      ))}
    </div>
  );
}
