import { useState, type ReactElement, type SubmitEvent } from "react";
import { NumberField } from "@/lib/ui/number-field";
import { TextField } from "@/lib/ui/text-field";
import { useDay } from "./day-context";
import type { Moves } from "./use-moves";

const LONGEST_MIN = 1440;

/** A step of the brewer's own, behind what is under way. */
export function AddStep({ moves }: { readonly moves: Moves }): ReactElement {
  const { day } = useDay();
  const [title, setTitle] = useState("");
  const [length, setLength] = useState("10");
  const [errors, setErrors] = useState<{ readonly title?: string; readonly length?: string }>({});

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const minutes = Number(length.replace(",", "."));
    const isLength = length.trim() !== "" && minutes >= 0 && minutes <= LONGEST_MIN;
    const found = {
      ...(title.trim() === "" ? { title: "Step is empty; write what is to be done" } : {}),
      ...(isLength ? {} : { length: `Length “${length}” is not a number from 0 to ${String(LONGEST_MIN)} min` }),
    };
    setErrors(found);
    if (Object.keys(found).length > 0) return;
    moves.add(title.trim().slice(0, 120), minutes, behind(day));
    setTitle("");
  }

  return (
    <details className="mt-4">
      <summary className="target">Add a step</summary>
      <form onSubmit={submit} noValidate className="mt-2 flex flex-col items-start gap-3">
        <TextField
          name="extra-title"
          label="What is to be done"
          value={title}
          maxLength={120}
          onChange={(event) => setTitle(event.target.value)}
          error={errors.title}
        />
        <NumberField
          name="extra-minutes"
          label="Length"
          unit="min"
          value={length}
          onChange={(event) => setLength(event.target.value)}
          error={errors.length}
        />
        <button type="submit" className="button day-button-small">
          Add it behind what is under way
        </button>
      </form>
    </details>
  );
}

/** Behind the running step, or before the next one. */
function behind({ running, next, steps }: ReturnType<typeof useDay>["day"]): string | null {
  const current = running.at(-1);
  if (current !== undefined) return current.step.id;
  const at = steps.findIndex((each) => each === next);
  return (at === -1 ? steps.at(-1) : steps[at - 1])?.step.id ?? null;
}
