import type { Equipment } from "@/lib/calc/ledger";
import type { Step } from "@/lib/calc/runsheet";
import type { LoggedStep } from "@/lib/model/log/step-log";
import { stepTitle } from "@/lib/ui/brew/step-titles";
import type { AlarmWords } from "../plan/step-events";

/** What a step is called: by its own name, or as the brewer called it. */
export function dayStepTitle(step: Step, known: LoggedStep | null, equipment: Equipment): string {
  const title = known?.added?.title ?? "";
  if (title !== "") return title;
  const names = step.name === "hop addition" ? step.amounts.map(({ name }) => name).join(", ") : "";
  return names === "" ? stepTitle(step, equipment) : `${stepTitle(step, equipment)}: ${names}`;
}

/** What the button says that confirms a step; a brewer confirms what was seen, not that a time has passed. */
export function doneWords({ name }: Step): string {
  switch (name) {
    case "heat strike water":
      return "It is hot enough";
    case "heat between rests":
      return "The rest temperature is reached";
    case "heat to the boil":
      return "It boils";
    case "cool to the stand":
      return "The stand temperature is reached";
    case "chill":
      return "It is cool enough";
    case "hop addition":
      return "Added";
    case "pitch":
      return "Pitched";
    default:
      return "Done";
  }
}

/** The words of a step's alarms. */
export function alarmWords(equipment: Equipment): AlarmWords {
  return {
    end: (step) => endWords(step, equipment),
    addition: (step) => dayStepTitle(step, null, equipment),
  };
}

function endWords(step: Step, equipment: Equipment): string {
  const title = stepTitle(step, equipment);
  switch (step.name) {
    case "heat strike water":
    case "heat between rests":
    case "heat to the boil":
    case "cool to the stand":
    case "chill":
      return `${title}: look at the thermometer`;
    case "boil":
      return "The boil is over";
    case "stand":
      return "The hop stand is over";
    case "rest":
      return "The rest is over";
    default:
      return `${title}: should be done`;
  }
}
