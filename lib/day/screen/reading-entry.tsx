import { useEffect, useRef, useState, type ReactElement, type SubmitEvent } from "react";
import type { LoggedReading } from "@/lib/model/log/logged-readings";
import {
  amountUnitText,
  needsSampleTemperature,
  readDraft,
  sampleLabel,
  type MeasuringPoint,
} from "@/lib/ui/brew/reading-draft";
import { ReadingDetails } from "@/lib/ui/brew/reading-details";
import { displayUnit } from "@/lib/ui/display-unit";
import { NumberField } from "@/lib/ui/number-field";
import { Quantity } from "@/lib/ui/quantity";
import { useDay } from "./day-context";
import { Keypad, pressed } from "./keypad";
import { useReadingEntry, type ReadingEntryState } from "./use-reading-entry";

interface ReadingEntryProps {
  readonly point: MeasuringPoint;
  readonly step: string | null;
  readonly target: LoggedReading | null;
  readonly onClose: () => void;
}

type NumberName = "amount" | "sample";

/** A reading by keypad, in the unit of the instrument; what is usual is filled in and can be changed. */
export function ReadingEntry(a: ReadingEntryProps): ReactElement {
  const { preferences } = useDay();
  const { point } = a;
  const entry = useReadingEntry(a);
  const { draft, errors, question, problem, type, save } = entry;
  const [active, setActive] = useState<NumberName>("amount");
  const form = useRef<HTMLFormElement>(null);

  useEffect(() => {
    if (Object.keys(errors).length > 0) form.current?.querySelector<HTMLElement>("[aria-invalid]")?.focus();
  }, [errors]);

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    save(false);
  }

  return (
    <form ref={form} onSubmit={submit} noValidate className="flex flex-col gap-3">
      <Expectation point={point} target={a.target} />
      <Numbers entry={entry} point={point} isCorrection={a.target !== null} onActive={setActive} />
      <Correction entry={entry} point={point} />
      <Keypad
        mayBeNegative={point.range.min < 0}
        onPress={(key) => type(active, pressed(draft[active], key, active === "sample" && isUntouched(draft.sample)))}
        of={active === "amount" ? point.label : sampleLabel(point)}
      />
      {question === null ? null : <Asking question={question} onKeep={() => save(true)} />}
      {problem === null ? null : (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
      <button type="submit" className="button day-button">
        Keep it
      </button>
      <ReadingDetails name="day" point={point} preferences={preferences} draft={draft} errors={errors} type={type} />
    </form>
  );
}

function Numbers({
  entry: { draft, errors, type },
  point,
  isCorrection,
  onActive,
}: {
  readonly entry: ReadingEntryState;
  readonly point: MeasuringPoint;
  readonly isCorrection: boolean;
  readonly onActive: (name: NumberName) => void;
}): ReactElement {
  const { preferences } = useDay();
  return (
    <div className="reading-amount flex flex-wrap items-end gap-x-4 gap-y-2">
      <NumberField
        name="day-amount"
        label={isCorrection ? "Right value" : point.label}
        unit={amountUnitText(draft, point, preferences)}
        value={draft.amount}
        mayBeNegative
        autoFocus
        onFocus={() => onActive("amount")}
        onChange={(event) => type("amount", event.target.value)}
        error={errors.amount}
      />
      {needsSampleTemperature(draft, point) ? (
        <NumberField
          name="day-sample"
          label={sampleLabel(point)}
          unit={displayUnit("temperature", preferences).unit}
          value={draft.sample}
          onFocus={() => onActive("sample")}
          onChange={(event) => type("sample", event.target.value)}
          error={errors.sample}
        />
      ) : null}
    </div>
  );
}

/** A sample temperature that was filled in beforehand gives way to the first digit. */
function isUntouched(sample: string): boolean {
  return !sample.endsWith(".") && sample.length <= 3 && Number(sample) % 1 === 0;
}

function Expectation({
  point: { expected, dimension },
  target,
}: {
  readonly point: MeasuringPoint;
  readonly target: LoggedReading | null;
}): ReactElement | null {
  const { preferences } = useDay();
  if (target !== null) {
    return (
      <p>
        Was <Quantity value={target.measured.value} dimension={dimension} preferences={preferences} />, entered as “
        {target.measured.entered}”. It stays in the log beside the new value.
      </p>
    );
  }
  if (expected === null) return null;
  return (
    <p>
      Expect{" "}
      <Quantity value={expected.value} interval={expected.interval} dimension={dimension} preferences={preferences} />.
    </p>
  );
}

/** What the temperature of the sample or the stick's table makes of the number, before it is kept. */
function Correction({
  entry: { draft },
  point,
}: {
  readonly entry: ReadingEntryState;
  readonly point: MeasuringPoint;
}): ReactElement | null {
  const { preferences } = useDay();
  if (draft.amount.trim() === "") return null;
  const read = readDraft(draft, point, preferences);
  if (!read.ok || read.reading.correction === null) return null;
  return <p role="status">{read.reading.correction}.</p>;
}

function Asking({ question, onKeep }: { readonly question: string; readonly onKeep: () => void }): ReactElement {
  return (
    <div role="alert" className="notice notice-attention flex flex-wrap items-center gap-3">
      <p className="font-semibold">{question}</p>
      <button type="button" className="button day-button-small" onClick={onKeep}>
        Keep it as it is
      </button>
    </div>
  );
}
