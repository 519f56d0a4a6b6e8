import type { ReactElement, ReactNode } from "react";
import { QUANTITIES } from "@/lib/calc/ledger";
import { ASKED_QUANTITIES, COMPARED_AS, GROUPINGS, type ComparisonQuestion } from "@/lib/model/summary/question";
import { SelectField } from "../select-field";

interface QuestionFormProps {
  readonly question: ComparisonQuestion;
  /** Further fields: which brews. */
  readonly children?: ReactNode;
}

const AS_WORDS: Readonly<Record<(typeof COMPARED_AS)[number], string>> = {
  measured: "what was measured",
  difference: "how far it is from the plan",
};

/** What is compared, as a form whose answer has an address. It needs no script. */
export function QuestionForm({ question, children }: QuestionFormProps): ReactElement {
  return (
    <form method="get" className="no-print mt-4 flex flex-wrap items-end gap-4">
      <SelectField
        name="quantity"
        label="Quantity"
        options={ASKED_QUANTITIES.map((id) => ({ value: id, text: QUANTITIES[id].label }))}
        defaultValue={question.quantity}
      />
      <SelectField
        name="as"
        label="Compare"
        options={COMPARED_AS.map((as) => ({ value: as, text: AS_WORDS[as] }))}
        defaultValue={question.as}
      />
      <SelectField
        name="group"
        label="Group by"
        options={GROUPINGS.map((group) => ({ value: group, text: group }))}
        defaultValue={question.group}
      />
      {children}
      <button type="submit" className="button">
        Compare
      </button>
    </form>
  );
}
