import { BREW_STATES } from "@/lib/model/brew";
import type { ComparisonQuestion } from "@/lib/model/summary/question";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";
import type { Choices } from "./read-choices";

interface BrewFilterFieldsProps {
  readonly question: ComparisonQuestion;
  readonly choices: Choices;
}

/** Which brews: every field may stay open. */
export function BrewFilterFields({ question, choices }: BrewFilterFieldsProps) {
  const any = (text: string) => [{ value: "", text }];
  return (
    <>
      <SelectField
        name="recipe"
        label="Recipe"
        options={[...any("any recipe"), ...choices.recipes]}
        defaultValue={question.recipe ?? ""}
      />
      <SelectField
        name="sharedBrew"
        label="Shared brew"
        options={[...any("any, or none"), ...choices.sharedBrews]}
        defaultValue={question.sharedBrew ?? ""}
      />
      <SelectField
        name="brewer"
        label="Brewer"
        options={[...any("anybody"), ...choices.brewers]}
        defaultValue={question.brewer ?? ""}
      />
      <SelectField
        name="state"
        label="State"
        options={[...any("any state"), ...BREW_STATES.map((state) => ({ value: state, text: state }))]}
        defaultValue={question.state ?? ""}
      />
      <TextField name="from" label="Begun from" type="date" defaultValue={question.from ?? ""} />
      <TextField name="to" label="Begun until" type="date" defaultValue={question.to ?? ""} />
    </>
  );
}
