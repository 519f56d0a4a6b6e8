"use client";

import { useState, useTransition, type SubmitEvent } from "react";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { EQUIPMENT_KINDS, equipmentKindWords } from "@/lib/model/typical-equipment";
import { ErrorSummary } from "@/lib/ui/error-summary";
import { NumberField } from "@/lib/ui/number-field";
import { fieldUnit } from "@/lib/ui/read-field";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { createEquipmentAction } from "./actions";
import { ANSWER_NAMES, ANSWERS } from "./answers";
import { readAnswers, type AnswerName, type Answers } from "./read-answers";

interface AnswersFormProps {
  readonly space: string;
  readonly preferences: Preferences;
}

const KINDS = EQUIPMENT_KINDS.map((kind) => ({ value: kind, text: equipmentKindWords(kind) }));

const EMPTY_ANSWERS: Answers = {
  name: "",
  kind: EQUIPMENT_KINDS[0],
  capacity: "",
  power: "",
  voltage: "230",
  usualBatch: "",
  altitude: "0",
};

/** The answers that a profile begins with, in the units of the person who gives them. */
export function AnswersForm({ space, preferences }: AnswersFormProps) {
  const [answers, setAnswers] = useState(EMPTY_ANSWERS);
  const [errors, setErrors] = useState<FieldErrors>({});
  const [isPending, startTransition] = useTransition();

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const read = readAnswers(answers, preferences);
    setErrors(read.problems);
    if (Object.keys(read.problems).length > 0) return;
    startTransition(async () => {
      const answer = await createEquipmentAction({ space, answers: read.values });
      if (answer.status === "refused") setErrors({ "": answer.message });
      if (answer.status === "invalid") setErrors(withoutStem(answer.fieldErrors));
    });
  }

  const set = (name: AnswerName, text: string): void => setAnswers({ ...answers, [name]: text });
  return (
    <form onSubmit={submit} noValidate className="flex max-w-xl flex-col gap-5">
      <ErrorSummary errors={errors} />
      <TextField
        name="name"
        label="Name"
        hint="What the club calls it."
        maxLength={80}
        value={answers.name}
        error={errors.name}
        onChange={(event) => set("name", event.target.value)}
      />
      <SelectField
        name="kind"
        label="Kind"
        options={KINDS}
        value={answers.kind}
        onChange={(event) => set("kind", event.target.value)}
      />
      <NumberAnswers {...{ answers, errors, preferences }} onAnswer={set} />
      <div>
        <SubmitButton pending="Estimating…" isPending={isPending}>
          Make the profile
        </SubmitButton>
      </div>
    </form>
  );
}

function NumberAnswers(props: {
  readonly answers: Answers;
  readonly errors: FieldErrors;
  readonly preferences: Preferences;
  readonly onAnswer: (name: AnswerName, text: string) => void;
}) {
  const { answers, errors, preferences, onAnswer } = props;
  return (
    <>
      {ANSWER_NAMES.map((name) => (
        <NumberField
          key={name}
          name={name}
          label={ANSWERS[name].label}
          unit={fieldUnit(ANSWERS[name].field, preferences)}
          hint={ANSWERS[name].hint}
          mayBeNegative={name === "altitude"}
          maxLength={40}
          value={answers[name]}
          error={errors[name]}
          onChange={(event) => onAnswer(name, event.target.value)}
        />
      ))}
    </>
  );
}

function withoutStem(errors: FieldErrors): FieldErrors {
  return Object.fromEntries(
    Object.entries(errors).map(([path, message]) => [path.replace(/^answers\.?/, ""), message]),
  );
}
