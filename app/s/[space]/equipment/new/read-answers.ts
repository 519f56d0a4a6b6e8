import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { readField } from "@/lib/ui/read-field";
import { ANSWER_NAMES, ANSWERS, type NumberAnswer } from "./answers";

export type AnswerName = NumberAnswer | "name" | "kind";
export type Answers = Readonly<Record<AnswerName, string>>;

/** The answers in the library's units, and what cannot be read. */
export function readAnswers(
  answers: Answers,
  preferences: Preferences,
): { readonly values: Readonly<Record<string, string | number>>; readonly problems: FieldErrors } {
  const problems = new Map<string, string>();
  const name = answers.name.trim();
  if (name === "") problems.set("name", "Name of the equipment is empty");
  const values: Record<string, string | number> = { name, kind: answers.kind };
  for (const answer of ANSWER_NAMES) {
    const { field } = ANSWERS[answer];
    const read = readField({ field, text: answers[answer], preferences });
    if (read.ok) values[answer] = read.value;
    else problems.set(answer, read.message);
  }
  return { values, problems: Object.fromEntries(problems) };
}
