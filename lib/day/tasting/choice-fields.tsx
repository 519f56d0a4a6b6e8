import { useId, useState, type ReactElement } from "react";
import { LONGEST_PART_NOTE, type Choice } from "@/lib/model/tasting/sheet";
import { useSheetDraft } from "./use-sheet-draft";

interface ChoiceFieldsProps {
  readonly kept: Choice;
  readonly glasses: readonly number[];
  readonly save: (choice: Choice, isFinal: boolean) => Promise<void>;
  readonly onHandedIn: () => void;
}

/** The glass that a judge chooses, and why. */
export function ChoiceFields({ kept, glasses, save, onHandedIn }: ChoiceFieldsProps): ReactElement {
  // A note alone is not a choice, so it is kept with the glass.
  const draft = useSheetDraft(kept, (choice) => (choice.glassNo === 0 ? Promise.resolve() : save(choice, false)));
  const [problem, setProblem] = useState<string | null>(null);
  const { value: choice } = draft;

  function handIn(): void {
    if (choice.glassNo === 0) {
      setProblem(`Choose one of the glasses ${glasses.join(", ")}, even if you have to guess.`);
      return;
    }
    draft.settle();
    save(choice, true)
      .then(onHandedIn)
      .catch((error: unknown) => setProblem(error instanceof Error ? error.message : String(error)));
  }

  return (
    <>
      <GlassPicker
        glasses={glasses}
        chosen={choice.glassNo}
        onChoose={(glassNo) => draft.change({ ...choice, glassNo }, "now")}
      />
      <label className="field mt-4">
        <span className="field-label">What told them apart</span>
        <textarea
          className="input"
          rows={3}
          maxLength={LONGEST_PART_NOTE}
          value={choice.note}
          onChange={({ target }) => draft.change({ ...choice, note: target.value }, "soon")}
          onBlur={draft.settle}
        />
      </label>
      {(problem ?? draft.problem) === null ? null : (
        <p className="field-error mt-2" role="alert">
          {problem ?? draft.problem}
        </p>
      )}
      <button type="button" className="button mt-4" onClick={handIn}>
        Hand in
      </button>
    </>
  );
}

interface GlassPickerProps {
  readonly glasses: readonly number[];
  readonly chosen: number;
  readonly onChoose: (glassNo: number) => void;
}

function GlassPicker({ glasses, chosen, onChoose }: GlassPickerProps): ReactElement {
  const id = useId();
  return (
    <fieldset className="mt-4">
      <legend className="sr-only">The glass that you choose</legend>
      <div className="points glasses">
        {glasses.map((glassNo) => (
          <label key={glassNo} className="points-key">
            <input
              type="radio"
              className="sr-only"
              name={`${id}-glass`}
              checked={chosen === glassNo}
              onChange={() => onChoose(glassNo)}
            />
            <span>{glassNo}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
