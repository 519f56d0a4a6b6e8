import { explain, type ExplainedNumber } from "@/lib/calc/explain";
import { intervals } from "@/lib/calc/ledger";
import type { ExplainableNumber, ExplainedCell } from "./desk-messages";
import { kettleFigures, type KettleTask, type ShownBrew } from "./kettle-figures";

/** The explanation of one number of the table with its interval; null where nothing is brewed. */
export function explainCell(task: KettleTask, number: ExplainableNumber): ExplainedCell | null {
  const { brew } = kettleFigures(task);
  if (brew === null) return null;
  if (number === "hops") return { explanation: explainHops(brew), interval: null };
  const { recipe, ledger } = brew;
  const { equipment } = task.kettle;
  const { ambient } = task.content.writtenOn;
  const interval = intervals({ recipe, equipment, ambient })[number] ?? null;
  return { explanation: explain({ ledger, recipe, equipment, ambient, id: number }), interval };
}

/** The one number of the table that is no number of the ledger: a sum over its rows. */
function explainHops({ recipe }: ShownBrew): ExplainedNumber {
  const inputs = recipe.hops.map(({ name, use, minutes, grams }) => ({
    label: use === "dry" ? `${name}, dry` : `${name}, ${use}, ${String(minutes)} min`,
    value: grams,
    dimension: "grams" as const,
    unit: "g",
  }));
  return {
    label: "Hops, all additions",
    value: recipe.hops.reduce((sum, hop) => sum + hop.grams, 0),
    dimension: "grams",
    words:
      "All the hops to weigh out. Each addition is solved anew for this kettle, so that it gives the bitterness, or as a dry hop the dose, that it gives in the recipe as written.",
    equation: "hops = the sum of all additions",
    inputs,
    sources: [{ anchor: "mass-balance", title: "Conservation of mass and of extract" }],
    validRange: "Any recipe that brews.",
    whatIf: [],
  };
}
